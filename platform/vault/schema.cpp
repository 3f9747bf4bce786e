#include "platform/vault/schema.h"

#include <array>

namespace peelpack::vault {
namespace {

// entry: row by row in the order of arrival, numbered from 1 without a gap. feed 0: a certificate. seq -1: says which
// feed the feed number stands for. chain: how many rows there are and a digest over all of them. slot: the data key,
// wrapped. wrong_try: of passphrase or PIN.
constexpr std::array firstTables = std::to_array<std::string_view>({
    "CREATE TABLE vault (one INTEGER PRIMARY KEY CHECK (one = 1), id BLOB NOT NULL) STRICT",
    "CREATE TABLE slot (kind INTEGER PRIMARY KEY, salt BLOB NOT NULL, mark_check BLOB NOT NULL, commitment BLOB NOT "
    "NULL, sealed BLOB NOT NULL, checksum BLOB NOT NULL) STRICT",
    "CREATE TABLE wrong_try (one INTEGER PRIMARY KEY CHECK (one = 1), count INTEGER NOT NULL, last_at INTEGER NOT "
    "NULL) STRICT",
    "CREATE TABLE entry (number INTEGER PRIMARY KEY, feed INTEGER NOT NULL, seq INTEGER NOT NULL, sealed BLOB NOT "
    "NULL) STRICT",
    "CREATE TRIGGER entry_stays BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END",
    "CREATE TRIGGER entry_is_kept BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'entries are never removed'); END",
    "CREATE TABLE chain (one INTEGER PRIMARY KEY CHECK (one = 1), sealed BLOB NOT NULL) STRICT",
    "CREATE TABLE note (name TEXT PRIMARY KEY, sealed BLOB NOT NULL) STRICT",
});
// held: volumes that wait for what comes before them.
constexpr std::array heldVolumes = std::to_array<std::string_view>({
    "CREATE TABLE held (number INTEGER PRIMARY KEY, sealed BLOB NOT NULL) STRICT",
});

constexpr std::array steps{SchemaStep{1, firstTables}, SchemaStep{2, heldVolumes}};

} // namespace

std::span<const SchemaStep> schemaSteps()
{
    return steps;
}

int newestSchema()
{
    return steps.back().number;
}

} // namespace peelpack::vault
