#include "platform/session/directory.h"

#include "core/base/text.h"
#include "sync/parcel/parcel.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace peelpack::session {
namespace {

using journal::Role;

constexpr std::array roleWords =
    std::to_array<std::string_view>({"director", "instructor", "coordinator", "contact", "student"});
constexpr std::size_t leastDigits = 4;

bool named(const keys::Id& id, const std::string& name, std::string_view wanted)
{
    const std::string digits = keys::hex(id.view());
    return base::foldCaseAndSpaces(name) == base::foldCaseAndSpaces(wanted) ||
           (wanted.size() >= leastDigits && std::string_view(digits).starts_with(wanted));
}

template <class Item, class Fits>
base::Result<const Item*> findOne(const std::vector<Item>& items, const Fits& fits, const char* what)
{
    const Item* found = nullptr;
    for (const Item& item : items) {
        if (!fits(item)) {
            continue;
        }
        if (found != nullptr) {
            return base::Error{base::ErrorCode::BadValue, "More than one " + std::string(what) +
                                                              " is named so; use the first digits of the id that "
                                                              "\"program show\" lists."};
        }
        found = &item;
    }
    if (found == nullptr) {
        return base::Error{base::ErrorCode::NotFound,
                           "No " + std::string(what) + " of that name is known here; \"program show\" lists them."};
    }
    return found;
}

/// A device whose record forked is not revoked: it has to hear of the fork.
bool isRevoked(const trust::Authority& authority, const Session& session, const keys::VerifyKey& device,
               const keys::Id& stream)
{
    const journal::FeedId feed{device, stream};
    const journal::Feed* held = session.ledger().feed(feed);
    const std::uint32_t count = held == nullptr ? 0 : held->count();
    return authority.revokedFrom(feed) <= count;
}

/// A key to which nothing can be sealed, however it came to be granted, must not keep a parcel from everybody else.
bool getsParcels(const GrantedDevice& device)
{
    return !device.revoked && keys::usable(device.seal);
}

} // namespace

std::string_view word(Role role)
{
    return roleWords.at(static_cast<std::size_t>(role));
}

std::optional<Role> roleFromWord(std::string_view text)
{
    const auto found = std::find(roleWords.begin(), roleWords.end(), text);
    return found == roleWords.end() ? std::nullopt : std::optional(static_cast<Role>(found - roleWords.begin()));
}

Directory::Directory(const Session& session)
{
    const trust::Authority& authority = session.authority();
    for (const trust::Certificate* certificate : trust::directorsThatHold(session.ledger().certificates())) {
        const auto& director = std::get<trust::DirectorCertificate>(certificate->content);
        Person& person = personFor(director.person, Role::Director);
        person.name = director.name;
        person.devices.push_back({director.device, director.seal, false});
    }
    const auto wanted = journal::ofKind({journal::Kind::Grant, journal::Kind::Vouch});
    for (const auto& [id, feed] : session.ledger().feeds()) {
        journal::eachTrunkEntry(feed, feed.count(), wanted, [&](const journal::Decoded& entry) {
            if (authority.judge(entry).standing != trust::Judgment::Standing::Counts) {
                return;
            }
            if (const auto* grant = std::get_if<journal::Grant>(&entry.payload)) {
                takeGrant(authority, *grant);
            } else {
                takeVouch(authority, std::get<journal::Vouch>(entry.payload));
            }
        });
    }
    for (Person& person : m_people) {
        const keys::Id& stream = person.role == Role::Student ? person.id : session.programStream();
        for (GrantedDevice& device : person.devices) {
            device.revoked = isRevoked(authority, session, device.key, stream);
        }
    }
    std::sort(m_people.begin(), m_people.end(), [](const Person& a, const Person& b) {
        return std::tie(a.role, a.name, a.id) < std::tie(b.role, b.name, b.id);
    });
    std::sort(m_preceptors.begin(), m_preceptors.end(),
              [](const Preceptor& a, const Preceptor& b) { return std::tie(a.name, a.id) < std::tie(b.name, b.id); });
}

Person& Directory::personFor(const keys::Id& id, Role role)
{
    const auto found = std::find_if(m_people.begin(), m_people.end(),
                                    [&](const Person& person) { return person.id == id && person.role == role; });
    if (found != m_people.end()) {
        return *found;
    }
    m_people.push_back({id, {}, role, {}, {}});
    return m_people.back();
}

void Directory::takeGrant(const trust::Authority& authority, const journal::Grant& grant)
{
    Person& person = personFor(grant.person, grant.role);
    person.name = grant.name;
    const trust::Holder* holder = authority.holder(grant.device);
    person.scopes = holder == nullptr ? grant.scopes : holder->scopes;
    const bool known = std::any_of(person.devices.begin(), person.devices.end(),
                                   [&](const GrantedDevice& device) { return device.key == grant.device; });
    if (!known) {
        person.devices.push_back({grant.device, grant.seal, false});
    }
}

void Directory::takeVouch(const trust::Authority& authority, const journal::Vouch& vouch)
{
    auto found = std::find_if(m_preceptors.begin(), m_preceptors.end(),
                              [&](const Preceptor& preceptor) { return preceptor.id == vouch.person; });
    if (found == m_preceptors.end()) {
        m_preceptors.push_back({vouch.person, vouch.name, vouch.credential, vouch.site, {}});
        found = m_preceptors.end() - 1;
    }
    const SigningKeyOf key{vouch.keyKind, vouch.key, vouch.card, vouch.epoch,
                           authority.signerRevoked(vouch.keyKind, vouch.key, vouch.card, vouch.epoch)};
    const bool known = std::any_of(found->keys.begin(), found->keys.end(), [&](const SigningKeyOf& other) {
        return other.key == key.key && other.card == key.card && other.epoch == key.epoch;
    });
    if (!known) {
        found->keys.push_back(key);
    }
}

const Person* Directory::person(const keys::Id& id) const
{
    const auto found =
        std::find_if(m_people.begin(), m_people.end(), [&](const Person& person) { return person.id == id; });
    return found == m_people.end() ? nullptr : &*found;
}

base::Result<const Person*> Directory::findPerson(std::string_view nameOrId, std::optional<Role> role) const
{
    return findOne(
        m_people,
        [&](const Person& person) {
            return (!role || person.role == *role) && named(person.id, person.name, nameOrId);
        },
        role ? word(*role).data() : "person");
}

base::Result<const Preceptor*> Directory::findPreceptor(std::string_view nameOrId) const
{
    return findOne(
        m_preceptors, [&](const Preceptor& preceptor) { return named(preceptor.id, preceptor.name, nameOrId); },
        "preceptor");
}

const Preceptor* Directory::ofCard(const keys::Id& card) const
{
    const auto found = std::find_if(m_preceptors.begin(), m_preceptors.end(), [&](const Preceptor& preceptor) {
        return std::any_of(preceptor.keys.begin(), preceptor.keys.end(), [&](const SigningKeyOf& key) {
            return key.kind == journal::KeyKind::Card && key.card == card;
        });
    });
    return found == m_preceptors.end() ? nullptr : &*found;
}

std::vector<keys::SealKey> Directory::staffKeys(const keys::Id& student, const keys::VerifyKey& without) const
{
    const Person* about = person(student);
    const auto near = [&](const Person& staff) {
        const bool all = staff.role == Role::Director || staff.scopes.empty() || about == nullptr;
        return all || std::any_of(staff.scopes.begin(), staff.scopes.end(), [&](const std::string& scope) {
                   return std::find(about->scopes.begin(), about->scopes.end(), scope) != about->scopes.end();
               });
    };
    std::vector<keys::SealKey> found;
    for (const bool nearOnes : {true, false}) {
        for (const Person& staff : m_people) {
            const bool teaches = staff.role == Role::Director || staff.role == Role::Instructor;
            if (!teaches || near(staff) != nearOnes) {
                continue;
            }
            for (const GrantedDevice& device : staff.devices) {
                if (getsParcels(device) && device.key != without && found.size() < parcel::mostRecipients) {
                    found.push_back(device.seal);
                }
            }
        }
    }
    return found;
}

std::vector<keys::SealKey> Directory::keysOf(const Person& person)
{
    std::vector<keys::SealKey> found;
    for (const GrantedDevice& device : person.devices) {
        if (getsParcels(device)) {
            found.push_back(device.seal);
        }
    }
    return found;
}

} // namespace peelpack::session
