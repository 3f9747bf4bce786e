#pragma once

#include "platform/cli/answer.h"
#include "platform/evidence/sheet_proof.h"
#include "sync/merge/ledger.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace peelpack::cli {

/// Whether the bytes of a file are meant as JSON: volumes and parcels begin with words of their own.
bool looksLikeJson(keys::ByteView bytes);
/// A completion record or proofs of sheets, not verified. BadInput: it is neither. Errors name the file.
base::Result<evidence::Json> readEvidence(const std::string& file);
base::Result<evidence::Json> evidenceIn(const std::string& file, keys::ByteView bytes);

/// Verifies records and proofs of sheets with the program's id alone, and what they say of one another; against a
/// verified journal also that the decision which a record cites is there, and the signatures that a sheet names.
class RecordCheck {
public:
    explicit RecordCheck(const keys::VerifyKey& program) : m_program(program) {}

    /// A document of readEvidence().
    void take(const std::string& file, evidence::Json document);
    [[nodiscard]] bool empty() const { return m_files.empty(); }
    /// Adds what was found; false when something does not verify.
    bool report(Answer& answer, const merge::Ledger* journal) const;

private:
    struct File {
        std::string name;
        evidence::Json document; ///< the record
        base::Result<evidence::CompletionRecord> record;
        std::optional<base::Result<evidence::SheetProofs>> proofs; ///< empty: the record alone
    };
    /// What was found about one file: lines, members, and whether all of it verifies.
    struct Found {
        std::string text;
        nlohmann::ordered_json json = nlohmann::ordered_json::object();
        bool good = true;
    };

    /// A verified journal, and what counts in it.
    struct Journal {
        const merge::Ledger& ledger;
        trust::Authority authority;
    };

    [[nodiscard]] static bool isDecided(const Journal& journal, const evidence::CompletionRecord& record);
    /// The attestations of a student that count.
    [[nodiscard]] static std::set<keys::Hash> attestations(const Journal& journal, const keys::Id& student);
    [[nodiscard]] Found check(const File& file, const Journal* journal) const;
    static void addSheets(const File& file, const Journal* journal, Found& found);
    void addSupersession(const File& file, Found& found) const;

    keys::VerifyKey m_program;
    std::vector<File> m_files;
};

} // namespace peelpack::cli
