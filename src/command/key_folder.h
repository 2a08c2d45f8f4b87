// command/key_folder.h: the secret keys of this machine, each locked with a passphrase in a file of
// its own, in a folder that nobody else may read. They are no part of any book.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "command/command.h"
#include "logbook/names.h"
#include "seal/locked_key.h"

namespace command {

struct KeyFile {
  logbook::PublicKey key;
  std::string path;
  std::string text;
};

// Those that can be read; another file in the folder is left alone. Sorted by key.
std::vector<KeyFile> keys_here(const World& world);
// Writes a new file, readable by its owner only; durable when it returns. Gives its path. Throws
// store::Trouble if it cannot be made.
std::string keep_key(const seal::SecretKey& key, const std::string& locked, const World& world);
void forget_key(const std::string& path);

logbook::PublicKey named_key(const seal::PublicKey& key);

}  // namespace command
