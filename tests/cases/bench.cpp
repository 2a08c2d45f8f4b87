#include "cases/bench.h"

#include "cases/pieces.h"

namespace cases {

namespace {

namespace fs = std::filesystem;
using nlohmann::json;

json read_json(const std::string& text) {
  json read = json::parse(text, nullptr, false);
  return read.is_discarded() ? json() : read;
}

std::string told(const Outcome& outcome) {
  return "exit " + std::to_string(outcome.exit) + "\n" + outcome.out + outcome.err;
}

// What is done with a copy leaves the book as it was, its marks too.
class Kept {
 public:
  explicit Kept(const fs::path& folder) : folder_(folder) {
    fs::copy(folder_, copy_.path(), fs::copy_options::recursive);
  }
  ~Kept() {
    for (const auto& file : fs::directory_iterator(folder_)) fs::remove_all(file.path());
    fs::copy(copy_.path(), folder_, fs::copy_options::recursive);
  }
  Kept(const Kept&) = delete;
  Kept& operator=(const Kept&) = delete;

 private:
  fs::path folder_;
  ScratchFolder copy_;
};

std::string saved_sentence(const Outcome& outcome) {
  const json read = read_json(outcome.out);
  if (!read.is_object() || !read.contains("saved") || read.at("saved").empty()) return {};
  return read.at("saved").at(0).value("sentence", "");
}

std::string joined_entries(const json& read, std::size_t at) {
  if (!read.is_object() || !read.contains("saved") || at >= read.at("saved").size()) return {};
  return read.at("saved").at(at).value("entry", "");
}

}  // namespace

Bench::Bench(std::string program, const CaseFile& file)
    : program_(std::move(program)), file_(file) {}

std::vector<Failure> Bench::failures() {
  for (const std::string& wrong : file_.wrong) fail(0, wrong);
  if (failures_.empty()) begin();
  if (!failures_.empty()) return failures_;
  for (const Step& step : file_.steps) take(step);
  return failures_;
}

void Bench::begin() {
  std::vector<std::string> words{
      "new", "Case", "--for-tests", "--clock", file_.today + "T12:00:00Z", "--seed", "1"};
  for (std::string& word : words_of(file_.settings)) words.push_back(std::move(word));
  const Outcome outcome = run(words);
  if (outcome.exit != 0) fail(0, "the book would not begin: " + told(outcome));
}

void Bench::take(const Step& step) {
  switch (step.act) {
    case Act::say:
      return say(step);
    case Act::accept:
      return accept(step);
    case Act::refuse:
      return refuse(step, false);
    case Act::doubt:
      return refuse(step, true);
    case Act::type:
      return type(step);
    case Act::perform:
      return perform(step);
    case Act::ask:
      return ask(step);
  }
}

void Bench::say(const Step& step) {
  std::string sheet;
  std::vector<std::string> labels;
  for (const Line& line : step.lines) {
    std::string sentence = line.text;
    labels.push_back(take_label(sentence));
    sheet += with_names(sentence) + "\n";
  }
  const Outcome outcome = run({"read", "-", "--json"}, sheet);
  if (outcome.exit != 0) return fail(step.what.number, "not taken: " + told(outcome));
  const json read = read_json(outcome.out);
  for (std::size_t i = 0; i < labels.size(); ++i) {
    if (!labels[i].empty()) name(labels[i], joined_entries(read, i), step.lines[i].number);
  }
}

void Bench::accept(const Step& step) {
  const std::string sentence = with_names(step.what.text);
  const Outcome outcome = run({"say", sentence, "--because", "told in a case", "--json"});
  if (outcome.exit != 0) return fail(step.what.number, "not taken: " + told(outcome));
  const json read = read_json(outcome.out);
  if (!step.label.empty()) name(step.label, joined_entries(read, 0), step.what.number);
  const Answer got{outcome.exit, read, outcome.out + outcome.err};
  for (const Line& line : step.lines) hold(line, got);
}

void Bench::refuse(const Step& step, bool is_acceptable) {
  const std::string sentence = with_names(step.what.text);
  const std::string before = file_text(folder_.path() / "book.db");
  const Outcome outcome = run({"say", sentence});
  if (outcome.exit != 65) {
    fail(step.what.number, "expected a refusal (exit 65), got " + told(outcome));
  } else if (file_text(folder_.path() / "book.db") != before) {
    fail(step.what.number, "a refused sentence changed the book");
  }
  const Answer got{outcome.exit, read_json(outcome.out), outcome.out + outcome.err};
  for (const Line& line : step.lines) hold(line, got);
  const Kept kept(folder_.path());
  const Outcome insisted = run({"say", sentence, "--because", "told in a case"});
  if ((insisted.exit == 0) == is_acceptable) return;
  fail(step.what.number, (is_acceptable ? "with a reason it must be taken, got "
                                        : "even with a reason it must be refused, got ") +
                             told(insisted));
}

void Bench::type(const Step& step) {
  const Kept kept(folder_.path());
  const Outcome outcome = run({"say", with_names(step.what.text), "--json"});
  const std::string sentence = saved_sentence(outcome);
  for (const Line& line : step.lines) {
    const std::string wanted = with_names(line.text);
    if (sentence == wanted) continue;
    fail(line.number,
         "expected " + wanted + "\n       got " + (sentence.empty() ? told(outcome) : sentence));
  }
}

void Bench::perform(const Step& step) {
  std::vector<std::string> words = words_of(with_names(step.what.text));
  const bool has_json = !words.empty() && words.front() != "rebuild" && words.front() != "new";
  if (has_json) words.emplace_back("--json");
  const Outcome outcome = run(words);
  if (outcome.exit != 0) return fail(step.what.number, "it did not succeed: " + told(outcome));
  const json read = read_json(outcome.out);
  if (!step.label.empty()) name(step.label, joined_entries(read, 0), step.what.number);
  const Answer got{outcome.exit, read, outcome.out + outcome.err};
  for (const Line& line : step.lines) hold(line, got);
}

void Bench::ask(const Step& step) {
  const Answer got = answer(step.what);
  if (got.exit != 0 && got.exit != 1 && got.exit != 3 && step.lines.empty()) {
    fail(step.what.number, "no answer: " + got.text);
  }
  for (const Line& line : step.lines) hold(line, got);
}

Outcome Bench::run(const std::vector<std::string>& words, const std::string& input) {
  Job job;
  job.words = {program_};
  job.words.insert(job.words.end(), words.begin(), words.end());
  job.input = input;
  job.folder = folder_.path();
  return cases::run(job);
}

// Asked twice: the JSON, and the words; both must go with the same exit code.
Answer Bench::answer(const Line& command) {
  std::vector<std::string> words = words_of(with_names(command.text));
  const Outcome plain = run(words);
  words.emplace_back("--json");
  const Outcome machine = run(words);
  if (plain.exit != machine.exit) {
    fail(command.number, "text and JSON exit differently: " + std::to_string(plain.exit) + " and " +
                             std::to_string(machine.exit));
  }
  return {plain.exit, read_json(machine.out), plain.out + plain.err};
}

std::string Bench::with_names(const std::string& text) const {
  std::string result = text;
  for (const auto& [label, entry] : names_) {
    const std::string gap = "{" + label + "}";
    for (auto at = result.find(gap); at != std::string::npos; at = result.find(gap, at)) {
      result.replace(at, gap.size(), entry);
    }
  }
  return result;
}

void Bench::name(const std::string& label, const std::string& entry, std::size_t line) {
  if (entry.empty()) return fail(line, "no entry was told for the label " + label);
  names_[label] = entry;
}

void Bench::fail(std::size_t line, const std::string& what) { failures_.push_back({line, what}); }

void Bench::hold(const Line& expectation, const Answer& answer) {
  const std::string wrong = against(with_names(expectation.text), answer);
  if (!wrong.empty()) fail(expectation.number, expectation.text + "\n    " + wrong);
}

}  // namespace cases
