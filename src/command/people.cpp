#include <algorithm>
#include <ostream>
#include <set>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/enter.h"
#include "command/key_folder.h"
#include "command/passphrase.h"
#include "command/signers.h"
#include "command/the_book.h"
#include "report/people_list.h"
#include "sentence/sentence.h"
#include "text/pieces.h"
#include "words/signings.h"

namespace command {

namespace {

ExitCode list_people(const Typed& typed, World& world) {
  auto looked = look(typed, world);
  if (const auto* why = std::get_if<Unanswerable>(&looked)) return say_unanswerable(*why, world);
  const BookView& view = *std::get<std::unique_ptr<BookView>>(looked);
  std::vector<logbook::PublicKey> here;
  for (const KeyFile& file : keys_here(world)) here.push_back(file.key);
  return say_answer(report::people_list(holdings_of(view.standing), here, view.sheet()), typed,
                    world);
}

std::string name_in(const Typed& typed) {
  Typed rest = typed;
  rest.operands.erase(rest.operands.begin());
  return rest.joined();
}

std::int64_t keys_of(const std::vector<reckon::Holding>& holdings,
                     const logbook::PersonName& name) {
  std::int64_t keys = 0;
  for (const reckon::Holding& holding : holdings) {
    if (holding.name == name) keys += static_cast<std::int64_t>(holding.keys.size());
  }
  return keys;
}

ExitCode say_line(const logbook::Said& said, const Typed& typed, World& world) {
  Entering entering;
  entering.lines = {{sentence::say(said), ""}};
  return enter(entering, typed, world);
}

// The key file is on the disk before the sentence that names the key.
ExitCode say_or_forget(const std::string& path, const logbook::Said& said, const Typed& typed,
                       World& world) {
  const ExitCode code = say_line(said, typed, world);
  if (code != done) {
    forget_key(path);
    return code;
  }
  tell(*world.err, "The key lies locked in " + path +
                       ". Whoever has that file and its passphrase signs as this person.\n");
  return code;
}

ExitCode say_none(const NoPassphrase& none, World& world) {
  tell(*world.err, none.sentence + "\n");
  return none.code;
}

ExitCode make_key(const Typed& typed, World& world) {
  auto looked = look({}, world);
  const BookView& view = *std::get<std::unique_ptr<BookView>>(looked);
  const auto holdings = holdings_of(view.standing);
  const auto found = find_signer(holdings, signer_named(name_in(typed), typed));
  if (const auto* why = std::get_if<Unanswerable>(&found)) return say_unanswerable(*why, world);
  const reckon::Holding& signer = std::get<reckon::Holding>(found);
  AskedPassphrase asked =
      ask_new_passphrase("A passphrase for the new key of " + signer.name.text + ":", typed, world);
  if (const auto* none = std::get_if<NoPassphrase>(&asked)) return say_none(*none, world);
  const seal::SecretKey key =
      open_to_read(world).new_key(signer.name.text, keys_of(holdings, signer.name) + 1);
  logbook::Said said;
  said.day = world.today;
  said.fact = logbook::PersonHolds{
      signer.name, signer.certificate, signer.kind, {named_key(key.public_key())}};
  const std::string locked = seal::lock(key, std::get<Passphrase>(asked).words);
  if (locked.empty()) {
    return say_none(
        {"This machine has not the memory to lock a key. Nothing was saved.", cannot_create},
        world);
  }
  return say_or_forget(keep_key(key, locked, world), said, typed, world);
}

ExitCode end_key(const Typed& typed, World& world) {
  auto looked = look({}, world);
  const BookView& view = *std::get<std::unique_ptr<BookView>>(looked);
  const std::string start = text::upper(name_in(typed));
  std::set<std::pair<logbook::PersonName, logbook::PublicKey>> meant;
  for (const reckon::Holding& holding : holdings_of(view.standing)) {
    for (const reckon::KeyHeld& held : holding.keys) {
      const bool is_meant = start.size() >= 4 && text::upper(held.key.text).starts_with(start);
      if (is_meant && !held.ended) meant.emplace(holding.name, held.key);
    }
  }
  if (meant.size() != 1) {
    const std::string which = meant.empty() ? "No key on record that still signs begins with \""
                                            : "More than one key begins with \"";
    tell(*world.err,
         which + name_in(typed) + "\". timeworn people shows the keys. Nothing was saved.\n");
    return no_such;
  }
  logbook::Said said;
  said.day = world.today;
  said.fact =
      logbook::KeyEnds{meant.begin()->first, meant.begin()->second, typed.text("--because")};
  return say_line(said, typed, world);
}

ExitCode run_people(const Typed& typed, World& world) {
  if (typed.operands.empty()) return list_people(typed, world);
  const bool has_name = typed.operands.size() > 1;
  if (typed.operands.front() == "key" && has_name) return make_key(typed, world);
  if (typed.operands.front() == "end-key" && has_name) return end_key(typed, world);
  *world.err << "Say timeworn people, timeworn people key NAME or timeworn people end-key KEY.\n";
  return typed_wrongly;
}

}  // namespace

const Command people_command{
    "people",
    "who signs, with which keys",
    "[key NAME|end-key KEY]",
    "  timeworn people\n"
    "  timeworn people key 'B. Quill'\n"
    "  timeworn people end-key 3f2a9c41 --because 'laptop lost'\n"
    "\nkey makes a key on this machine, locked with a passphrase, and puts it on record. end-key\n"
    "says that a key no longer signs; what it signed before stays signed.\n",
    {certificate_option,
     kind_option,
     {"--because", "REASON", "with end-key: why"},
     passphrase_option,
     as_of_option,
     known_option,
     known_on_option,
     json_option},
    run_people};

}  // namespace command
