#include <algorithm>
#include <ostream>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/enter.h"
#include "command/key_folder.h"
#include "command/passphrase.h"
#include "command/signers.h"
#include "command/the_signed.h"
#include "reckon/check.h"
#include "sentence/sentence.h"
#include "words/faults.h"
#include "words/signings.h"
#include "words/words.h"

namespace command {

namespace {

using logbook::Said;
using logbook::Signed;
using logbook::SignedHow;

// Who signs and how; the entries are not named yet. On paper a person without a certificate on
// record may have signed.
std::variant<Signed, Unanswerable> who_signs(const Typed& typed, const BookView& view) {
  const bool is_on_paper = typed.has("--on-paper");
  Signed fact;
  fact.how = is_on_paper ? SignedHow::on_paper : SignedHow::with_key;
  fact.by.text = *typed.text("--by");
  fact.page = typed.text("--page");
  fact.statement = typed.text("--statement");
  const auto signer = find_signer(holdings_of(view.standing), signer_named(fact.by.text, typed));
  if (const auto* holding = std::get_if<reckon::Holding>(&signer)) {
    fact.by = holding->name;
    fact.certificate = holding->certificate;
    fact.kind = holding->kind;
  } else if (!is_on_paper || std::get<Unanswerable>(signer).code != no_such) {
    return std::get<Unanswerable>(signer);
  }
  return fact;
}

std::variant<TheSigned, Unanswerable> find_entries(const Typed& typed, const BookView& view,
                                                   const Signed& fact) {
  TheSigned these;
  if (const auto visit = typed.text("--visit")) {
    const auto day = quantity::read_day(*visit);
    if (!day.is_read()) {
      return Unanswerable{"\"" + *visit + "\" is no day. Write it like 2026-03-10.", typed_wrongly};
    }
    const auto aircraft = find_aircraft(view, typed.joined());
    if (const auto* why = std::get_if<Unanswerable>(&aircraft)) return *why;
    these = work_of_visit(view, std::get<logbook::Aircraft>(aircraft), day.value(), fact);
  } else {
    these = named_to_sign(view, typed.operands);
  }
  if (these.refusal.empty()) return these;
  return Unanswerable{these.refusal + " Nothing was saved.", refused};
}

std::variant<Said, Unanswerable> sentence_of(Signed fact, const BookView& view,
                                             const TheSigned& these) {
  name_in(fact, these, view.entries);
  Said said;
  said.day = view.today;
  said.fact = std::move(fact);
  // What is said must be what people could have typed.
  sentence::Read read = sentence::read(sentence::say(said), {});
  if (read.said) return *read.said;
  return Unanswerable{
      words::misreadings_text(sentence::say(said), read.wrong) + "\nNothing was saved.", refused};
}

// What speaks against it, before anyone types a passphrase.
std::string objections_to(const Said& said, const BookView& view) {
  reckon::Checker checker(view.entries, view.today);
  auto objections = checker.objections(said);
  std::erase_if(objections, [](const reckon::Objection& objection) {
    return objection.kind == reckon::CheckKind::signature_needs_key;
  });
  std::string against;
  const std::size_t told = std::min(objections.size(), words::most_faults_told);
  for (std::size_t i = 0; i < told; ++i) against += words::objection_text(objections[i]) + "\n";
  const std::string more = words::more_faults_text(objections.size());
  return more.empty() ? against : against + more + "\n";
}

// What people wrote goes to the screen with its controls made visible.
void show(const TheSigned& these, const Said& said, World& world) {
  const auto& fact = std::get<Signed>(said.fact);
  std::string text = fact.how == SignedHow::on_paper ? "Signed on paper by " : "You sign as ";
  text += fact.by.text;
  if (fact.certificate) text += ", " + words::certificate_text(*fact.certificate, fact.kind);
  text += ":\n";
  for (const logbook::Entry* entry : these.entries) {
    text += "  " + words::entry_name(entry->id) + "  " + entry->sentence + "\n";
  }
  if (fact.statement) text += "with the statement: " + *fact.statement + "\n";
  tell(*world.err, text + "The signature says: " + sentence::say(said) + "\n");
  world.err->flush();
}

ExitCode save(const Said& said, const seal::SecretKey* key, const Typed& typed, World& world) {
  Entering entering;
  entering.lines = {{sentence::say(said), ""}};
  entering.key = key;
  return enter(entering, typed, world);
}

// The key of this certificate that lies on this machine.
std::variant<KeyFile, Unanswerable> key_here(const Said& said, const BookView& view,
                                             const World& world) {
  const auto& fact = std::get<Signed>(said.fact);
  const auto signer = find_signer(holdings_of(view.standing),
                                  {fact.by.text, fact.certificate, fact.kind.value_or("")});
  const auto& holding = std::get<reckon::Holding>(signer);
  for (KeyFile& file : keys_here(world)) {
    const bool is_theirs =
        std::any_of(holding.keys.begin(), holding.keys.end(),
                    [&](const reckon::KeyHeld& held) { return held.key == file.key; });
    if (is_theirs) return std::move(file);
  }
  return Unanswerable{"No key of " + fact.by.text +
                          " that still signs is on this machine. Make one with: timeworn people "
                          "key '" +
                          fact.by.text + "'. Nothing was saved.",
                      no_such};
}

std::string_view trouble_text(seal::Unlocking trouble) {
  switch (trouble) {
    case seal::Unlocking::damaged:
      return "The key file is damaged. End this key and make a new one. Nothing was saved.";
    case seal::Unlocking::other_version:
      return "The key file was made by a newer version. Use that one. Nothing was saved.";
    case seal::Unlocking::wrong_passphrase:
      return "That is not the passphrase of this key. Nothing was saved.";
    case seal::Unlocking::no_memory:
      return "This machine has not the memory to open the key. Nothing was saved.";
  }
  return "";
}

ExitCode sign_with_key(const Said& said, const KeyFile& file, const Typed& typed, World& world) {
  AskedPassphrase asked = ask_passphrase(
      "Passphrase of key " + words::fingerprint(file.key) + " to sign this:", typed, world);
  if (const auto* none = std::get_if<NoPassphrase>(&asked)) {
    tell(*world.err, none->sentence + "\n");
    return none->code;
  }
  const auto unlocked = seal::unlock(file.text, std::get<Passphrase>(asked).words);
  if (const auto* trouble = std::get_if<seal::Unlocking>(&unlocked)) {
    *world.err << trouble_text(*trouble) << "\n";
    return not_allowed;
  }
  return save(said, &std::get<seal::SecretKey>(unlocked), typed, world);
}

ExitCode sign_these(const Typed& typed, const BookView& view, World& world) {
  const auto who = who_signs(typed, view);
  if (const auto* why = std::get_if<Unanswerable>(&who)) return say_unanswerable(*why, world);
  const auto found = find_entries(typed, view, std::get<Signed>(who));
  if (const auto* why = std::get_if<Unanswerable>(&found)) return say_unanswerable(*why, world);
  const auto& these = std::get<TheSigned>(found);
  const auto said = sentence_of(std::get<Signed>(who), view, these);
  if (const auto* why = std::get_if<Unanswerable>(&said)) return say_unanswerable(*why, world);
  const Said& what = std::get<Said>(said);
  const std::string against = objections_to(what, view);
  if (!against.empty()) {
    tell(*world.err, "Not saved. " + against);
    return refused;
  }
  if (typed.has("--on-paper")) {
    show(these, what, world);
    return save(what, nullptr, typed, world);
  }
  const auto key = key_here(what, view, world);
  if (const auto* why = std::get_if<Unanswerable>(&key)) return say_unanswerable(*why, world);
  show(these, what, world);
  return sign_with_key(what, std::get<KeyFile>(key), typed, world);
}

ExitCode run_sign(const Typed& typed, World& world) {
  if (typed.operands.empty() || !typed.has("--by")) {
    *world.err << "Signing names the entries and who signs. Say for example: timeworn sign "
                  "K7QXM-131..K7QXM-134 --by 'B. Quill'\n";
    return typed_wrongly;
  }
  if (typed.has("--page") && !typed.has("--on-paper")) {
    *world.err << "A page belongs to a signature on paper. Add --on-paper, or leave --page out.\n";
    return typed_wrongly;
  }
  auto looked = look({}, world);
  return sign_these(typed, *std::get<std::unique_ptr<BookView>>(looked), world);
}

}  // namespace

const Command sign_command{
    "sign",
    "sign entries with a key, or say that paper was signed",
    "ENTRY[..ENTRY]|AIRCRAFT",
    "  timeworn sign K7QXM-131..K7QXM-134 K7QXM-140 --by 'B. Quill'\n"
    "  timeworn sign --visit 2026-03-10 ZZ-KIT --by 'B. Quill' --statement 'done as 43.9 asks'\n"
    "  timeworn sign K7QXM-131 --by 'B. Quill' --on-paper --page 12\n"
    "\nIt shows every sentence in full, then asks for the passphrase of the key.\n",
    {{"--by", "NAME", "who signs, as the record names the person"},
     {"--visit", "DAY", "all work of that day on the aircraft that this person has not signed"},
     certificate_option,
     kind_option,
     {"--statement", "TEXT", "what the person states by it"},
     {"--on-paper", "", "the page was signed by hand; no key is used"},
     {"--page", "PAGE", "with --on-paper: which page"},
     passphrase_option,
     json_option},
    run_sign};

}  // namespace command
