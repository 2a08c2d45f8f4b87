#include "store/sqlite.h"

#include <sqlite3.h>

#include <array>
#include <new>
#include <utility>

#include "quantity/expect.h"
#include "store/trouble.h"

namespace store {
namespace {

using logbook::TroubleKind;

constexpr std::string_view in_memory = ":memory:";
// How long others may hold the file before we say that it is in use. A writer that waits for the
// last reader lets no new one in (sqlite.org/lockingv3.html), so a reader waits longer than it.
constexpr int writers_patience_milliseconds = 5000;
constexpr int readers_patience_milliseconds = 10000;

// What a record needs and a connection must ask for each time.
constexpr std::string_view settings =
    "PRAGMA synchronous = EXTRA;"
    "PRAGMA foreign_keys = ON;"
    "PRAGMA recursive_triggers = ON;"
    "PRAGMA cell_size_check = ON;"
    "PRAGMA mmap_size = 0;"
    "PRAGMA temp_store = MEMORY;";

// What a file from elsewhere could ask of us at most (sqlite.org/security.html). A row may be
// longer than that page proposes, since a signature may name thousands of entries.
constexpr std::array<std::array<int, 2>, 10> limits = {{
    {SQLITE_LIMIT_LENGTH, 4'000'000},
    {SQLITE_LIMIT_SQL_LENGTH, 100'000},
    {SQLITE_LIMIT_COLUMN, 100},
    {SQLITE_LIMIT_EXPR_DEPTH, 40},
    {SQLITE_LIMIT_COMPOUND_SELECT, 5},
    {SQLITE_LIMIT_VDBE_OP, 25'000},
    {SQLITE_LIMIT_FUNCTION_ARG, 8},
    {SQLITE_LIMIT_ATTACHED, 0},
    {SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 50},
    {SQLITE_LIMIT_VARIABLE_NUMBER, 30},
}};

// Which trouble a result is. A reading command that fails in the middle of a write-back of another
// one's journal cannot write either, so only the plain read errors are told as reading.
TroubleKind kind_of(int result) {
  switch (result & 0xFF) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return TroubleKind::in_use;
    case SQLITE_NOTADB:
      return TroubleKind::not_a_book;
    case SQLITE_PERM:
    case SQLITE_AUTH:
      return TroubleKind::not_allowed;
    case SQLITE_FULL:
    case SQLITE_READONLY:
      return TroubleKind::cannot_write;
    case SQLITE_IOERR:
      return result == SQLITE_IOERR_READ || result == SQLITE_IOERR_SHORT_READ
                 ? TroubleKind::cannot_read
                 : TroubleKind::cannot_write;
    case SQLITE_CANTOPEN:
      return TroubleKind::cannot_read;
    default:
      return TroubleKind::damaged;
  }
}

}  // namespace

Statement::Statement(Database& database, std::string sql, sqlite3_stmt* prepared)
    : database_(&database), sql_(std::move(sql)), prepared_(prepared) {}

Statement::Statement(Statement&& other) noexcept
    : database_(other.database_),
      sql_(std::move(other.sql_)),
      prepared_(std::exchange(other.prepared_, nullptr)) {}

Statement::~Statement() {
  if (prepared_ != nullptr) database_->give_back(std::move(sql_), prepared_);
}

void Statement::bind(int parameter, std::int64_t number) {
  database_->check(sqlite3_bind_int64(prepared_, parameter, number));
}

void Statement::bind(int parameter, std::string_view text) {
  // A null pointer would bind NULL, and an empty text is no NULL.
  const char* const bytes = text.data() == nullptr ? "" : text.data();
  database_->check(
      sqlite3_bind_text64(prepared_, parameter, bytes, text.size(), SQLITE_STATIC, SQLITE_UTF8));
}

void Statement::bind(int parameter, Blob bytes) {
  EXPECT(!bytes.empty());
  database_->check(
      sqlite3_bind_blob64(prepared_, parameter, bytes.data(), bytes.size(), SQLITE_STATIC));
}

void Statement::bind(int parameter, Null) {
  database_->check(sqlite3_bind_null(prepared_, parameter));
}

bool Statement::next() {
  const int result = sqlite3_step(prepared_);
  if (result == SQLITE_ROW) return true;
  if (result != SQLITE_DONE) database_->fail(result);
  return false;
}

void Statement::run() { EXPECT(!next()); }

bool Statement::is_null(int column) const {
  return sqlite3_column_type(prepared_, column) == SQLITE_NULL;
}

std::int64_t Statement::number(int column) const { return sqlite3_column_int64(prepared_, column); }

std::string_view Statement::text(int column) const {
  const void* const bytes = sqlite3_column_text(prepared_, column);
  const auto size = static_cast<std::size_t>(sqlite3_column_bytes(prepared_, column));
  return {static_cast<const char*>(bytes), bytes == nullptr ? 0 : size};
}

Blob Statement::blob(int column) const {
  const void* const bytes = sqlite3_column_blob(prepared_, column);
  const auto size = static_cast<std::size_t>(sqlite3_column_bytes(prepared_, column));
  return {static_cast<const std::uint8_t*>(bytes), bytes == nullptr ? 0 : size};
}

Database::Database(const std::string& path, Mode mode)
    : path_(path), is_writing_(mode != Mode::read) {
  // Without leave to write, SQLite opens for reading by itself. A reader too asks for it, since it
  // may have to take back what a command that was killed left half done.
  try {
    open(SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE);
    set_up(mode);
  } catch (...) {
    close();
    throw;
  }
}

Database::~Database() { close(); }

void Database::open(int flags) {
  check(sqlite3_open_v2(path_.c_str(), &handle_, flags, nullptr));
  // The first statement would write a journal back into the file. What is in memory has none.
  if (path_ != in_memory) expect_own_journal(path_, [this] { return header(); });
}

// By the library's own descriptor: to close another one would drop the locks of this process.
FileHeader Database::header() const {
  FileHeader bytes{};
  sqlite3_file* file = nullptr;
  check(sqlite3_file_control(handle_, "main", SQLITE_FCNTL_FILE_POINTER, &file));
  if (file == nullptr || file->pMethods == nullptr) return bytes;
  // A file that is shorter is filled up with zeros.
  file->pMethods->xRead(file, bytes.data(), static_cast<int>(bytes.size()), 0);
  return bytes;
}

void Database::set_up(Mode mode) {
  for (const auto& [limit, most] : limits) sqlite3_limit(handle_, limit, most);
  check(sqlite3_busy_timeout(
      handle_, mode == Mode::read ? readers_patience_milliseconds : writers_patience_milliseconds));
  for (const int off : {SQLITE_DBCONFIG_TRUSTED_SCHEMA, SQLITE_DBCONFIG_DQS_DML,
                        SQLITE_DBCONFIG_DQS_DDL, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION}) {
    check(sqlite3_db_config(handle_, off, 0, nullptr));
  }
  check(sqlite3_db_config(handle_, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr));
  run(settings);
  if (mode == Mode::read) return run("PRAGMA query_only = ON");
  // A file that another program switched to a write-ahead log comes back to the rollback journal:
  // the library of Debian 12 can lose such a log when two processes write.
  run("PRAGMA journal_mode = DELETE");
}

void Database::close() noexcept {
  for (const auto& [sql, prepared] : stock_) sqlite3_finalize(prepared);
  stock_.clear();
  sqlite3_close_v2(handle_);
  handle_ = nullptr;
}

void Database::run(std::string_view script) {
  check(sqlite3_exec(handle_, std::string(script).c_str(), nullptr, nullptr, nullptr));
}

void Database::copy_to(Database& target) {
  sqlite3_backup* const copying = sqlite3_backup_init(target.handle_, "main", handle_, "main");
  if (copying == nullptr) target.fail(sqlite3_errcode(target.handle_));
  // In one step: in several, every commit of others would make it begin again.
  const int result = sqlite3_backup_step(copying, -1);
  sqlite3_backup_finish(copying);
  if ((result & 0xFF) == SQLITE_CORRUPT) fail(result);
  if (result != SQLITE_DONE) target.fail(result);
}

Statement Database::prepared(std::string_view sql) {
  if (const auto found = stock_.find(sql); found != stock_.end()) {
    auto node = stock_.extract(found);
    return {*this, std::move(node.key()), node.mapped()};
  }
  // Before the statement is there: it would be nobody's if there were no memory for its text.
  std::string text(sql);
  sqlite3_stmt* made = nullptr;
  check(sqlite3_prepare_v3(handle_, sql.data(), static_cast<int>(sql.size()),
                           SQLITE_PREPARE_PERSISTENT, &made, nullptr));
  return {*this, std::move(text), made};
}

void Database::give_back(std::string sql, sqlite3_stmt* prepared) noexcept {
  sqlite3_reset(prepared);
  sqlite3_clear_bindings(prepared);
  try {
    stock_.emplace(std::move(sql), prepared);
  } catch (const std::bad_alloc&) {
    sqlite3_finalize(prepared);
  }
}

void Database::check(int result) const {
  if (result != SQLITE_OK) fail(result);
}

void Database::fail(int result) const {
  if ((result & 0xFF) == SQLITE_NOMEM) throw std::bad_alloc();
  TroubleKind kind = kind_of(result);
  // A file that could be opened and then cannot be: its folder takes no journal.
  const bool is_journal = (result & 0xFF) == SQLITE_CANTOPEN && handle_ != nullptr && is_writing_;
  if (is_journal) kind = TroubleKind::cannot_write;
  const char* const words = handle_ == nullptr ? sqlite3_errstr(result) : sqlite3_errmsg(handle_);
  throw Trouble({kind, path_, words});
}

Transaction::Transaction(Database& database, Kind kind) : database_(database) {
  database_.execute(kind == Kind::write ? "BEGIN IMMEDIATE" : "BEGIN");
}

Transaction::~Transaction() {
  if (is_open_) roll_back();
}

void Transaction::roll_back() {
  is_open_ = false;
  // SQLite has rolled back by itself after some failures; then there is nothing to take back.
  try {
    database_.execute("ROLLBACK");
  } catch (const Trouble&) {
  } catch (const std::bad_alloc&) {
  }
}

void Transaction::commit() {
  database_.execute("COMMIT");
  is_open_ = false;
}

}  // namespace store
