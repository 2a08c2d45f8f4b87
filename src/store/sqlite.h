// store/sqlite.h: the only door to SQLite: one database file, its prepared statements and its
// transactions. Whatever fails is thrown as store::Trouble.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "store/journal.h"

struct sqlite3;
struct sqlite3_stmt;

namespace store {

using Blob = std::span<const std::uint8_t>;
struct Null {};

class Database;

// A prepared statement in use. It goes back to its database's stock when it is destroyed.
// Parameters are numbered from 1, columns from 0. What is bound must outlive the stepping.
class Statement {
 public:
  Statement(Statement&& other) noexcept;
  Statement(const Statement&) = delete;
  Statement& operator=(const Statement&) = delete;
  Statement& operator=(Statement&&) = delete;
  ~Statement();

  void bind(int parameter, std::int64_t number);
  void bind(int parameter, std::string_view text);
  void bind(int parameter, Blob bytes);
  void bind(int parameter, Null);

  // True while there is a row.
  bool next();
  // For a statement without rows.
  void run();

  bool is_null(int column) const;
  std::int64_t number(int column) const;
  // Valid until the next step.
  std::string_view text(int column) const;
  Blob blob(int column) const;

 private:
  friend class Database;
  Statement(Database& database, std::string sql, sqlite3_stmt* prepared);
  Database* database_;
  std::string sql_;
  sqlite3_stmt* prepared_;
};

class Database {
 public:
  enum class Mode { read, write, create };
  // Opens the file with the settings that a record needs (schema/README.md). create expects an
  // empty file; the other two any file that is there.
  Database(const std::string& path, Mode mode);
  ~Database();
  Database(const Database&) = delete;
  Database& operator=(const Database&) = delete;

  const std::string& path() const { return path_; }
  // Copies all pages, as they are at this moment, over those of another database. Other programs
  // read on meanwhile; who wants to commit waits.
  void copy_to(Database& target);
  // Any number of statements without parameters or rows.
  void run(std::string_view script);

  template <class... Values>
  Statement statement(std::string_view sql, const Values&... values) {
    Statement result = prepared(sql);
    int parameter = 0;
    (result.bind(++parameter, values), ...);
    return result;
  }
  template <class... Values>
  void execute(std::string_view sql, const Values&... values) {
    statement(sql, values...).run();
  }
  // The number in the first column of the first row; zero if there is none.
  template <class... Values>
  std::int64_t number(std::string_view sql, const Values&... values) {
    Statement result = statement(sql, values...);
    return result.next() ? result.number(0) : 0;
  }

 private:
  friend class Statement;
  Statement prepared(std::string_view sql);
  void give_back(std::string sql, sqlite3_stmt* prepared) noexcept;
  [[noreturn]] void fail(int result) const;
  void check(int result) const;
  void open(int flags);
  void set_up(Mode mode);
  FileHeader header() const;
  void close() noexcept;

  std::string path_;
  bool is_writing_;
  sqlite3* handle_ = nullptr;
  std::multimap<std::string, sqlite3_stmt*, std::less<>> stock_;
};

// Everything between its beginning and its commit happens wholly or not at all.
class Transaction {
 public:
  enum class Kind {
    look,   // reads one state, takes no lock that keeps others from reading
    write,  // BEGIN IMMEDIATE: the only writer until the end
  };
  Transaction(Database& database, Kind kind);
  ~Transaction();
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  // Durable when it returns.
  void commit();
  // Also after a commit that failed: others who read may have kept it open.
  void roll_back();

 private:
  Database& database_;
  bool is_open_ = true;
};

}  // namespace store
