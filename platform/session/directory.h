#pragma once

#include "platform/session/session.h"
#include "sync/keys/seal.h"

namespace peelpack::session {

/// A device that somebody was granted, or that a certificate names.
struct GrantedDevice {
    keys::VerifyKey key;
    keys::SealKey seal;
    bool revoked = false; ///< nothing that it writes counts any more
};

/// Somebody with a role in the program.
struct Person {
    keys::Id id;
    std::string name;
    journal::Role role = journal::Role::Student;
    std::vector<std::string> scopes; ///< classes or sites
    std::vector<GrantedDevice> devices;
};

/// A key with which a preceptor signs, as somebody vouches for it.
struct SigningKeyOf {
    journal::KeyKind kind = journal::KeyKind::Card;
    keys::VerifyKey key;
    keys::Id card; ///< zero for a phone
    std::uint32_t epoch = 0;
    bool revoked = false;
};

/// Somebody who marks and signs.
struct Preceptor {
    keys::Id id;
    std::string name;
    std::string credential;
    std::string site;
    std::vector<SigningKeyOf> keys;
};

/// Who is who in a program, worked out from the entries that count.
class Directory {
public:
    explicit Directory(const Session& session);

    /// By role, then name, then id.
    [[nodiscard]] const std::vector<Person>& people() const { return m_people; }
    /// By name, then id.
    [[nodiscard]] const std::vector<Preceptor>& preceptors() const { return m_preceptors; }

    /// Null when nobody has that id.
    [[nodiscard]] const Person* person(const keys::Id& id) const;
    /// By full name (case and spaces do not matter) or by the first digits of the id (at least 4). NotFound; BadValue
    /// when several fit. Neither sentence repeats the name.
    [[nodiscard]] base::Result<const Person*> findPerson(std::string_view nameOrId,
                                                         std::optional<journal::Role> role = std::nullopt) const;
    [[nodiscard]] base::Result<const Preceptor*> findPreceptor(std::string_view nameOrId) const;
    /// The preceptor of a card, whatever its epoch; null when nobody vouches for it.
    [[nodiscard]] const Preceptor* ofCard(const keys::Id& card) const;

    /// To whom a student's parcel is sealed: every device of a director or instructor that is not revoked; at most 32,
    /// directors first, then those of the student's classes.
    [[nodiscard]] std::vector<keys::SealKey> staffKeys(const keys::Id& student, const keys::VerifyKey& without) const;
    /// The devices of one person that are not revoked.
    [[nodiscard]] static std::vector<keys::SealKey> keysOf(const Person& person);

private:
    void takeGrant(const trust::Authority& authority, const journal::Grant& grant);
    void takeVouch(const trust::Authority& authority, const journal::Vouch& vouch);
    Person& personFor(const keys::Id& id, journal::Role role);

    std::vector<Person> m_people;
    std::vector<Preceptor> m_preceptors;
};

/// "director", "instructor", "coordinator", "contact", "student".
std::string_view word(journal::Role role);
std::optional<journal::Role> roleFromWord(std::string_view text);

} // namespace peelpack::session
