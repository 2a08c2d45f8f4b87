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

// The certificate of that person which has not ended, with all keys that have not ended. Small and
// capital letters are the same; more than one certificate must be told apart.
std::variant<reckon::Holding, Unanswerable> find_signer(
    const std::vector<reckon::Holding>& holdings, const std::string& name,
    const std::optional<std::string>& certificate);

}  // namespace command
