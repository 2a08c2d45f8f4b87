#include <algorithm>
#include <array>
#include <ostream>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/heads.h"
#include "command/out_file.h"
#include "document/render.h"
#include "text/visible.h"

namespace command {

namespace {

struct Printed {
  std::string_view name;
  AnswerTo answer;
};
constexpr std::array printed = {
    Printed{"due", answer_due},     Printed{"lives", answer_lives},
    Printed{"trend", answer_trend}, Printed{"fleet", answer_fleet},
    Printed{"ready", answer_ready}, Printed{"history", answer_history},
};

Unanswerable no_such_report(const std::string& name) {
  std::string names;
  for (const Printed& one : printed) names += (names.empty() ? "" : ", ") + std::string(one.name);
  if (name.empty()) return {"Say which report to print: " + names + ".", typed_wrongly};
  return {"There is no report \"" + name + "\". There are: " + names + ".", typed_wrongly};
}

// The form asked for; else what the file's name ends in; without a file, text.
std::variant<document::Format, Unanswerable> form_of(const Typed& typed) {
  const std::string file = typed.text("-o").value_or("");
  const auto point = file.rfind('.');
  std::string name = file.empty() ? "text" : "";
  if (point != std::string::npos) name = file.substr(point + 1);
  name = name == "txt" ? "text" : name;
  name = typed.text("--as").value_or(name);
  if (const auto format = document::format_named(name)) return *format;
  return Unanswerable{"\"" + name + "\" is no form. Write --as text, html, svg, csv or json.",
                      typed_wrongly};
}

ExitCode put(const Answered& given, const Typed& typed, World& world) {
  const auto form = form_of(typed);
  if (const auto* why = std::get_if<Unanswerable>(&form)) return say_unanswerable(*why, world);
  const auto format = std::get<document::Format>(form);
  if (document::unrenderable(given.answer.document, format)) {
    return say_unanswerable(
        {"This report has no chart, so there is no picture of it.", typed_wrongly}, world);
  }
  const std::string bytes = document::render(given.answer.document, format, world.columns);
  const auto file = typed.text("-o");
  if (!file) {
    *world.out << bytes;
    return given.code;
  }
  if (const auto why = write_file(*file, bytes)) return say_unanswerable(*why, world);
  tell(*world.out, "Written: " + text::visible_line(*file) + "\n");
  return given.code;
}

ExitCode run_print(const Typed& typed, World& world) {
  const std::string name = typed.operands.empty() ? "" : typed.operands.front();
  const auto* const report = std::find_if(printed.begin(), printed.end(),
                                          [&](const Printed& one) { return one.name == name; });
  if (report == printed.end()) return say_unanswerable(no_such_report(name), world);
  Typed asked = typed;
  asked.operands.erase(asked.operands.begin());
  if (const auto form = form_of(typed); std::holds_alternative<Unanswerable>(form)) {
    return say_unanswerable(std::get<Unanswerable>(form), world);
  }
  asked.options["--charts"];
  const auto looked = look(asked, world);
  if (const auto* why = std::get_if<Unanswerable>(&looked)) return say_unanswerable(*why, world);
  const BookView& view = *std::get<std::unique_ptr<BookView>>(looked);
  Answering given = report->answer(asked, view);
  if (const auto* why = std::get_if<Unanswerable>(&given)) return say_unanswerable(*why, world);
  // On paper only: a sheet in a drawer shows later whether the book was cut off or made anew.
  const std::string heads = heads_sentence(view.entries);
  auto& blocks = std::get<Answered>(given).answer.document.blocks;
  if (!heads.empty()) blocks.emplace_back(document::Paragraph{heads});
  return put(std::get<Answered>(given), typed, world);
}

}  // namespace

const Command print_command{
    "print",
    "a report as a page, a table or a picture",
    "REPORT [THING]",
    "  timeworn print trend E-1001 -o trend.html\n"
    "  timeworn print fleet --as svg -o fleet.svg\n"
    "  timeworn print due ZZ-KIT --as csv\n"
    "\nReports: due, lives, trend, fleet, ready, history. Forms: text, html, svg, csv, json.\n",
    {{"--as", "FORM", "text, html, svg, csv or json; else as the file's name ends"},
     {"-o", "FILE", "write into this file"},
     {"--readings", "", "trend: list the readings too"},
     {"--within", "DISTANCE", "due: call it soon within \"25 h\", \"30 days\" or \"10 landings\""},
     {"--hours", "HOURS", "ready: how long the trip is"},
     {"--starts", "N", "ready: starts of each engine"},
     {"--landings", "N", "ready: landings"},
     {"--flights", "N", "ready: flights"},
     {"--by", "DAY", "ready: the day on which the trip ends"},
     {"--meter", "READING", "ready: what the meter shows"},
     as_of_option,
     known_option,
     known_on_option},
    run_print};

}  // namespace command
