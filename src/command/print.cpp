#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "command/book_view.h"
#include "command/commands.h"
#include "document/render.h"

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

// What stands there already may be replaced, unless it is a book or no plain file.
std::optional<std::string> why_not_there(const std::string& path) {
  namespace files = std::filesystem;
  std::error_code error;
  const files::file_status status = files::symlink_status(path, error);
  if (!files::exists(status)) return std::nullopt;
  if (!files::is_regular_file(status)) return "something else than a file stands there";
  std::ifstream there(path, std::ios::binary);
  std::array<char, 15> head{};
  there.read(head.data(), head.size());
  const std::string_view begins(head.data(), static_cast<std::size_t>(there.gcount()));
  if (begins == "SQLite format 3") return "that is a book";
  return std::nullopt;
}

Unanswerable cannot_write(const std::string& path, const std::string& why) {
  return {"\"" + path + "\" cannot be written: " + why + ".", cannot_create};
}

// The whole file or none: written beside, under a name that nothing has, then put in its place.
std::optional<Unanswerable> write_file(const std::string& path, const std::string& bytes) {
  if (const auto why = why_not_there(path)) return cannot_write(path, *why);
  std::string beside = path + ".XXXXXX";
  const int handle = ::mkstemp(beside.data());
  if (handle < 0) return cannot_write(path, std::generic_category().message(errno));
  ::fchmod(handle, S_IRUSR | S_IWUSR | S_IRGRP | S_IROTH);
  ::close(handle);
  std::ofstream file(beside, std::ios::binary | std::ios::trunc);
  file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  file.close();
  if (file && std::rename(beside.c_str(), path.c_str()) == 0) return std::nullopt;
  const std::string why = std::generic_category().message(errno);
  std::remove(beside.c_str());
  return cannot_write(path, why);
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
  *world.out << "Written: " << *file << '\n';
  return given.code;
}

ExitCode run(const Typed& typed, World& world) {
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
  const Answering given = look_and_answer(asked, world, report->answer);
  if (const auto* why = std::get_if<Unanswerable>(&given)) return say_unanswerable(*why, world);
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
    run};

}  // namespace command
