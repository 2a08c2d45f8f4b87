// tests/store/desk.h: a folder for one test, with a book and a place for its marks, and facts to
// write down.
#pragma once

#include <sqlite3.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <set>
#include <string>

#include "store/book.h"

namespace desk {

inline const quantity::Day first_day = *quantity::make_day({2026, 3, 1});

class Folder {
 public:
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "timeworn-XXXXXX").string();
    path_ = ::mkdtemp(name.data());
  }
  ~Folder() { std::filesystem::remove_all(path_); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::string path(const std::string& name) const { return path_ + "/" + name; }
  store::Surroundings surroundings() const {
    return {quantity::Instant::of(1'772'700'000), path("state"), {}, first_day};
  }

 private:
  std::string path_;
};

inline logbook::Said said(logbook::Fact fact, quantity::Day day = first_day) {
  logbook::Said result;
  result.day = day;
  result.fact = std::move(fact);
  return result;
}

inline logbook::Said begins() {
  logbook::RecordBegins begins;
  begins.name = {"Marrow Point"};
  return said(begins);
}

inline logbook::Said begins_for_tests(std::int64_t seed) {
  logbook::RecordBegins begins;
  begins.name = {"Marrow Point"};
  begins.for_tests = true;
  begins.clock = quantity::Instant::of(1'772'697'600);
  begins.seed = seed;
  return said(begins);
}

// A flight of so many minutes; six minutes are a tenth, so that the sentence stays short.
inline logbook::Said flew(std::int64_t minutes, const std::string& registration = "ZZ-KIT") {
  logbook::Flew flew;
  flew.aircraft = {{registration}};
  flew.hours = quantity::Hours::of(minutes * 60);
  return said(flew);
}

inline logbook::Said joins(const std::string& base) {
  return said(logbook::BaseJoins{{base}, std::nullopt});
}

inline logbook::Said struck(const std::string& writer, std::int64_t number) {
  return said(logbook::Struck{{writer, number}, "entered twice"});
}

inline store::Book make(const Folder& folder, const std::string& name = "the.book") {
  return store::Book::create(folder.path(name), begins(), folder.surroundings());
}

inline store::Book open(const Folder& folder, const std::string& name = "the.book",
                        store::Access access = store::Access::write) {
  return store::Book::open(folder.path(name), access, folder.surroundings());
}

// Writes one entry as one command.
inline logbook::Entry write(store::Book& book, const logbook::Said& said) {
  store::Pen pen(book);
  auto entry = std::get<logbook::Entry>(pen.append(said));
  pen.commit();
  return entry;
}

// What another program makes of SQL: its error, or nothing.
inline std::string run_sql(const std::string& path, const std::string& sql) {
  sqlite3* handle = nullptr;
  sqlite3_open(path.c_str(), &handle);
  const int result = sqlite3_exec(handle, sql.c_str(), nullptr, nullptr, nullptr);
  const std::string words = result == SQLITE_OK ? "" : sqlite3_errmsg(handle);
  sqlite3_close(handle);
  return words;
}

// The first column of the first row.
inline std::string ask_sql(const std::string& path, const std::string& sql) {
  sqlite3* handle = nullptr;
  sqlite3_stmt* statement = nullptr;
  sqlite3_open(path.c_str(), &handle);
  sqlite3_prepare_v2(handle, sql.c_str(), -1, &statement, nullptr);
  std::string words;
  if (sqlite3_step(statement) == SQLITE_ROW) {
    const auto* const bytes = sqlite3_column_text(statement, 0);
    if (bytes != nullptr) words = reinterpret_cast<const char*>(bytes);
  }
  sqlite3_finalize(statement);
  sqlite3_close(handle);
  return words;
}

// The same with every guard taken away, and put back afterwards.
inline std::string run_unguarded(const std::string& path, const std::string& sql) {
  const auto guards =
      ask_sql(path, "SELECT group_concat(sql, '; ') FROM sqlite_schema WHERE type = 'trigger'");
  const auto drop = ask_sql(path,
                            "SELECT group_concat('DROP TRIGGER ' || name, '; ') FROM "
                            "sqlite_schema WHERE type = 'trigger'");
  return run_sql(path, drop + "; " + sql + "; " + guards);
}

// What check finds in the book, as "chain 3", each once; "whole" if nothing is.
inline std::string found_in(const Folder& folder, const std::string& name) {
  std::set<std::string> found;
  for (const auto& one : open(folder, name, store::Access::prove).check()) {
    found.insert(one.what + (one.entry ? " " + std::to_string(one.entry->number) : ""));
  }
  std::string words;
  for (const std::string& one : found) words += (words.empty() ? "" : ", ") + one;
  return words.empty() ? "whole" : words;
}

// What a shell command prints.
inline std::string shell(const std::string& command) {
  std::string words;
  std::FILE* const pipe = ::popen(command.c_str(), "r");
  for (int c = std::fgetc(pipe); c != EOF; c = std::fgetc(pipe)) words += static_cast<char>(c);
  ::pclose(pipe);
  return words;
}

// The kinds of trouble by name, so that a test can say what it wants.
inline std::string name_of(logbook::TroubleKind kind) {
  using enum logbook::TroubleKind;
  switch (kind) {
    case no_such_book:
      return "no_such_book";
    case not_a_book:
      return "not_a_book";
    case newer_book:
      return "newer_book";
    case already_there:
      return "already_there";
    case cannot_create:
      return "cannot_create";
    case cannot_read:
      return "cannot_read";
    case cannot_write:
      return "cannot_write";
    case not_confirmed:
      return "not_confirmed";
    case in_use:
      return "in_use";
    case not_allowed:
      return "not_allowed";
    case damaged:
      return "damaged";
    case not_proved:
      return "not_proved";
    case no_place_for_mark:
      return "no_place_for_mark";
  }
  return "";
}

template <class Act>
std::string trouble_of(Act act) {
  try {
    act();
  } catch (const store::Trouble& trouble) {
    return name_of(trouble.what().kind);
  }
  return "none";
}

}  // namespace desk
