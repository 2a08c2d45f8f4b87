#include "report/record_check.h"

#include <algorithm>

#include "report/pieces.h"
#include "words/grammar.h"
#include "words/words.h"

namespace report {

namespace {

using document::Align;
using document::Json;
using document::Paragraph;
using document::Table;
using reckon::RecordFinding;

std::string fault_text(const BookFault& fault) {
  if (fault.entry.empty()) return words::fill("Fault in {}: {}", {fault.what, fault.detail});
  return words::fill("Fault in {}, {}: {}", {fault.what, fault.entry, fault.detail});
}

Table findings_table(const std::vector<RecordFinding>& findings, std::string key) {
  Table table{std::move(key),
              {{"entry", "Entry", Align::left}, {"what", "What is doubtful", Align::left}},
              {},
              "There is none."};
  for (const RecordFinding& finding : findings) {
    table.rows.push_back({words_cell(words::entry_name(finding.entry)),
                          words_cell(words::objection_text(finding.objection))});
  }
  return table;
}

std::string read_text(const Checked& checked) {
  return words::fill("Looked at {} and proved {} in two more ways.",
                     {words::counted(checked.entries, "entry", "entries"),
                      words::counted(checked.figures_compared, "figure", "figures")});
}

std::string quick_text(const Checked& checked) {
  return words::fill(
      "Proved the file and the chain of {}, not what they say. timeworn check proves the figures "
      "too.",
      {words::counted(checked.entries, "entry", "entries")});
}

std::string proved_text(const ProvedTo& proved) {
  if (proved.are_all) return words::fill("The chain is proved up to {}.", {proved.newest});
  if (!proved.are_some) return words::fill("From {} on no entry is proved.", {proved.next});
  return words::fill("The chain is proved up to {}. From {} on, to {}, no entry is proved.",
                     {proved.last, proved.next, proved.newest});
}

// After a fault: what can still be believed.
void add_proved(const Checked& checked, document::Document& page) {
  for (const ProvedTo& proved : checked.proved) {
    page.blocks.emplace_back(Paragraph{proved_text(proved)});
  }
  const bool is_file = std::any_of(
      checked.faults.begin(), checked.faults.end(),
      [](const BookFault& fault) { return fault.what == "file" || fault.what == "schema"; });
  if (!is_file) return;
  page.blocks.emplace_back(
      Paragraph{"The file itself is damaged, so no entry is called proved. Keep it as it is and "
                "restore the newest copy beside it: timeworn restore COPY --to FILE."});
}

std::int64_t size_of(std::size_t size) { return static_cast<std::int64_t>(size); }

std::int64_t refused_work(const Checked& checked) {
  return std::count_if(checked.refused.begin(), checked.refused.end(),
                       [](const RefusedSignature& one) { return one.wants_attention; });
}

bool has_anything_to_heed(const Checked& checked) {
  return !checked.faults.empty() || !checked.findings.empty() || !checked.questions.empty() ||
         refused_work(checked) > 0;
}

std::string result_text(const Checked& checked) {
  const bool is_clean = !has_anything_to_heed(checked);
  if (is_clean && checked.is_quick) return "The file and the chain hold.";
  if (is_clean) return "The record holds: no fault, no doubt, no open question.";
  const std::int64_t refused = refused_work(checked);
  const std::string unsigned_work =
      refused == 0 ? ""
                   : ", " + words::counted(refused, "signature that does not count",
                                           "signatures that do not count");
  return words::fill(
      "The record wants attention: {}, {}, {}{}.",
      {words::counted(size_of(checked.faults.size()), "fault", "faults"),
       words::counted(size_of(checked.findings.size()), "doubt", "doubts"),
       words::counted(size_of(checked.questions.size()), "open question", "open questions"),
       unsigned_work});
}

void add_findings(const Checked& checked, document::Document& page) {
  if (!checked.findings.empty()) {
    page.blocks.emplace_back(document::Heading{"Doubts that no sentence accepts"});
    page.blocks.emplace_back(findings_table(checked.findings, "doubts"));
  }
  if (!checked.accepted.empty()) {
    page.blocks.emplace_back(document::Heading{"Doubts that their sentences accept"});
    page.blocks.emplace_back(findings_table(checked.accepted, "accepted"));
  }
}

// Those that want attention first.
void add_refused(const Checked& checked, document::Document& page) {
  for (const bool attention : {true, false}) {
    for (const RefusedSignature& one : checked.refused) {
      if (one.wants_attention == attention) page.blocks.emplace_back(Paragraph{one.sentence});
    }
  }
}

Json findings_json(const std::vector<RecordFinding>& findings) {
  Json array = Json::array();
  for (const RecordFinding& finding : findings) {
    Json object = Json::object();
    object.set("entry", words::entry_name(finding.entry));
    object.set("doubt", words::doubt_text(finding.objection));
    array.add(object.set("sentence", words::objection_text(finding.objection)));
  }
  return array;
}

Json check_json(const Checked& checked, const Sheet& sheet) {
  Json json = json_head(sheet);
  json.set("entries", checked.entries).set("figures_compared", checked.figures_compared);
  Json faults = Json::array();
  for (const BookFault& fault : checked.faults) {
    Json object = Json::object();
    object.set("what", fault.what).set("entry", fault.entry).set("detail", fault.detail);
    faults.add(std::move(object));
  }
  json.set("faults", std::move(faults)).set("doubts", findings_json(checked.findings));
  json.set("accepted", findings_json(checked.accepted));
  Json questions = Json::array();
  for (const auto& question : checked.questions) {
    Json object = Json::object();
    object.set("name", question.name).set("class", question.class_);
    object.set("entries", names_json(question.entries));
    questions.add(object.set("sentence", words::question_text(question)));
  }
  json.set("questions", std::move(questions))
      .set("refused_signatures", refused_json(checked.refused));
  Json proved = Json::array();
  for (const ProvedTo& one : checked.proved) {
    Json object = Json::object();
    object.set("newest", one.newest).set("proved_to", one.are_some ? Json(one.last) : Json());
    proved.add(std::move(object));
  }
  json.set("quick", checked.is_quick).set("proved", std::move(proved));
  Json notes = Json::array();
  for (const std::string& sentence : checked.notes) notes.add(sentence);
  json.set("notes", std::move(notes));
  Json heads = Json::array();
  for (const std::string& head : checked.heads) heads.add(head);
  return json.set("heads", std::move(heads));
}

}  // namespace

Answer record_check(const Checked& checked, const Sheet& sheet) {
  Answer answer;
  document::Document& page = answer.document;
  page.title = result_text(checked);
  page.head = {checked.is_quick ? quick_text(checked) : read_text(checked)};
  for (const BookFault& fault : checked.faults) {
    page.blocks.emplace_back(Paragraph{fault_text(fault)});
  }
  add_proved(checked, page);
  for (const std::string& sentence : checked.notes) page.blocks.emplace_back(Paragraph{sentence});
  add_findings(checked, page);
  for (const auto& question : checked.questions) {
    page.blocks.emplace_back(Paragraph{words::question_text(question)});
  }
  add_refused(checked, page);
  if (!checked.heads.empty()) {
    page.blocks.emplace_back(
        Paragraph{words::fill("Newest entry of each base, for keeping apart: {}.",
                              {words::listed(checked.heads, "and")})});
  }
  add_foot(page, sheet);
  answer.json = check_json(checked, sheet);
  answer.needs_attention = has_anything_to_heed(checked);
  return answer;
}

}  // namespace report
