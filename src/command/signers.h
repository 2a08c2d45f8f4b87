// command/signers.h: the people on record who may sign, as a person names them.
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "command/book_view.h"
#include "reckon/keyholders.h"

namespace command {

std::vector<reckon::Holding> holdings_of(const reckon::Standing& standing);

// Who is to sign, as it was typed. An absent certificate or kind may be any; an empty kind is that
// of a certificate without one.
struct SignerNamed {
  std::string name;
  std::optional<std::string> certificate;
  std::optional<std::string> kind;
};
// With the options --certificate and --kind.
SignerNamed signer_named(const std::string& name, const Typed& typed);

inline constexpr Option certificate_option{"--certificate", "NUMBER",
                                           "which certificate, if the person holds more than one"};
inline constexpr Option kind_option{"--kind", "KIND",
                                    "which kind, if one number stands for more than one"};

// The certificate of that person which has not ended, with all keys that have not ended. Small and
// capital letters are the same; more than one certificate must be told apart.
std::variant<reckon::Holding, Unanswerable> find_signer(
    const std::vector<reckon::Holding>& holdings, const SignerNamed& named);

}  // namespace command
