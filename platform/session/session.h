#pragma once

#include "core/record/sheet_record.h"
#include "platform/vault/vault.h"
#include "sync/keys/random.h"
#include "sync/merge/ledger.h"
#include "sync/merge/receipts.h"
#include "sync/trust/program_rules.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace peelpack::session {

/// What the clock says now; a claim that goes into every entry.
using Clock = std::function<journal::Time()>;

/// An entry to be written: where and what.
struct Writing {
    keys::Id stream;
    journal::Payload payload;
};

struct SignedWriting {
    journal::Place place;
    journal::SignedEntry entry;
};

/// Why this installation may not sign at the moment; empty sentence: it may.
struct WriteBar {
    std::string sentence;
    [[nodiscard]] bool stands() const { return !sentence.empty(); }
};

/// An unlocked vault and the journal in it: the one way by which entries are written, taken in and sent, for the
/// command line and for the app. One thread at a time.
class Session {
public:
    /// Reads everything that the vault holds. NotFound: the vault belongs to no program yet.
    static base::Result<std::unique_ptr<Session>> open(std::unique_ptr<vault::Vault> vault, Clock clock,
                                                       keys::RandomSource& random);
    /// The same when its contents were read already.
    static base::Result<std::unique_ptr<Session>> open(std::unique_ptr<vault::Vault> vault, vault::Contents contents,
                                                       Clock clock, keys::RandomSource& random);

    [[nodiscard]] const keys::VerifyKey& program() const { return m_ledger.program(); }
    [[nodiscard]] const keys::Id& programStream() const { return m_programStream; }
    /// Whose vault this is, and as what they joined.
    [[nodiscard]] const keys::Id& person() const { return m_person; }
    [[nodiscard]] journal::Role role() const { return m_role; }
    [[nodiscard]] bool isStaff() const
    {
        return m_role == journal::Role::Director || m_role == journal::Role::Instructor;
    }

    [[nodiscard]] const merge::Ledger& ledger() const { return m_ledger; }
    [[nodiscard]] const trust::Authority& authority() const;
    /// All rules of the program that are in force; good until something is written or taken in.
    [[nodiscard]] const trust::ProgramRules& rules() const;
    /// What could not be read when the vault was opened, in words.
    [[nodiscard]] const std::vector<std::string>& damage() const { return m_damage; }
    [[nodiscard]] journal::Time now() const { return m_clock(); }
    [[nodiscard]] keys::RandomSource& random() const { return m_random; }
    [[nodiscard]] vault::Vault& vault() { return *m_vault; }

    /// The key of this installation. BadValue on a copy.
    [[nodiscard]] base::Result<const keys::DeviceKey*> device() const;
    /// The feed of this installation in a stream.
    [[nodiscard]] base::Result<journal::FeedId> ownFeed(const keys::Id& stream) const;
    [[nodiscard]] WriteBar writeBar() const;

    /// Writes, signs and keeps entries in one transaction; when it answers without an error they are saved. BadValue:
    /// it may not write, or a payload is not well formed.
    base::Result<std::vector<journal::Position>> append(const std::vector<Writing>& writings);
    base::Result<journal::Position> append(const keys::Id& stream, const journal::Payload& payload);

    /// Keeps certificates of the program key, and reads everything anew.
    base::Result<bool> keepCertificates(std::vector<keys::Bytes> certificates);

    /// Small values of this device.
    [[nodiscard]] std::optional<keys::Bytes> note(const std::string& name) const;
    base::Result<bool> setNote(const std::string& name, std::optional<keys::Bytes> value);

    /// New keys for this installation, after a fork or on a copy: entries go on in a new feed, which counts once an
    /// instructor has granted it.
    base::Result<bool> renewDevice();

    /// The sheets of a student as they stand. On a student's own device that nobody has granted yet, or whose grant has
    /// not come back, what it wrote itself is shown as it will count.
    [[nodiscard]] record::StudentRecord recordOf(const keys::Id& student) const;
    /// The same of several, in their order; works on several threads while it lasts.
    [[nodiscard]] std::vector<record::StudentRecord> recordsOf(const std::vector<keys::Id>& students) const;

private:
    friend class Intake;

    Session(std::unique_ptr<vault::Vault> vault, const keys::VerifyKey& program, Clock clock,
            keys::RandomSource& random);
    void takeContents(vault::Contents contents);
    [[nodiscard]] std::optional<journal::Position> lastReceiptFor(const journal::FeedId& feed) const;
    /// Reads the vault again: what came in may have mended what was damaged.
    base::Result<bool> reload();
    void forgetWorkedOut();
    void countOwnUngranted(record::StudentEvents& events) const;
    [[nodiscard]] base::Result<std::vector<SignedWriting>> signAll(const merge::Ledger& ledger,
                                                                   const std::vector<Writing>& writings) const;

    std::unique_ptr<vault::Vault> m_vault;
    Clock m_clock;
    keys::RandomSource& m_random;
    merge::Ledger m_ledger;
    keys::Id m_programStream;
    keys::Id m_person;
    journal::Role m_role = journal::Role::Student;
    std::map<std::string, keys::Bytes> m_notes;
    std::vector<vault::HeldVolume> m_held;
    std::vector<std::string> m_damage;
    std::vector<journal::FeedId> m_broken; ///< feeds whose later entries do not follow what is here
    mutable keys::UsableKeys m_usable;     ///< of signers whose attestations were written
    mutable std::optional<trust::Authority> m_authority;
    mutable std::optional<trust::ProgramRules> m_rules;
    mutable std::map<journal::FeedId, std::optional<journal::Position>> m_lastReceipts;
};

/// Names of notes.
namespace notes {
inline constexpr const char* program = "program";         ///< the program id
inline constexpr const char* person = "person";           ///< id
inline constexpr const char* role = "role";               ///< one byte, as in a grant; 0: director
inline constexpr const char* name = "name";               ///< how this person wants to be named
inline constexpr const char* credential = "credential";   ///< of a preceptor on whose own phone this is
inline constexpr const char* inviter = "inviter";         ///< seal key of whoever invited
inline constexpr const char* invitations = "invitations"; ///< given out and not yet answered
inline constexpr const char* stopped = "stopped";         ///< this installation's record split: no more signing
} // namespace notes

} // namespace peelpack::session
