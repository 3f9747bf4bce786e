#include "platform/session/preceptor_vault.h"

#include "platform/session/refusal.h"

#include <charconv>

namespace peelpack::session {
namespace {

constexpr std::string_view signedPrefix = "signed."; // then a number in 8 hexadecimal digits
constexpr std::size_t numberDigits = 8;
constexpr int hexadecimal = 16;
constexpr std::size_t mostName = 1000; // bytes; a request allows 200 characters

std::string noteOf(std::uint32_t number)
{
    std::string digits(numberDigits, '0');
    for (std::size_t i = numberDigits; i > 0; --i) {
        digits[i - 1] = "0123456789abcdef"[number % hexadecimal];
        number /= hexadecimal;
    }
    return std::string(signedPrefix) + digits;
}

std::optional<std::uint32_t> numberOf(std::string_view note)
{
    if (!note.starts_with(signedPrefix) || note.size() != signedPrefix.size() + numberDigits) {
        return std::nullopt;
    }
    std::uint32_t number = 0;
    const char* end = note.data() + note.size();
    const auto [rest, fault] = std::from_chars(note.data() + signedPrefix.size(), end, number, hexadecimal);
    return fault == std::errc{} && rest == end ? std::optional(number) : std::nullopt;
}

/// As it is kept: the length of the student's name (two bytes, the low one first), the name, the answer.
keys::Bytes keptForm(const std::string& student, const keys::Bytes& answer)
{
    constexpr unsigned byteBits = 8;
    constexpr std::size_t lowByte = 0xff;
    const std::string name = student.substr(0, mostName);
    keys::Bytes bytes{static_cast<std::uint8_t>(name.size() & lowByte),
                      static_cast<std::uint8_t>(name.size() >> byteBits)};
    keys::append(bytes, keys::bytesOf(name));
    keys::append(bytes, answer);
    return bytes;
}

std::optional<SignedHere> fromKept(keys::ByteView bytes)
{
    constexpr std::size_t lengthBytes = 2;
    constexpr std::size_t byteValues = 256;
    if (bytes.size() < lengthBytes) {
        return std::nullopt;
    }
    const std::size_t length = bytes[0] + byteValues * bytes[1];
    if (bytes.size() < lengthBytes + length) {
        return std::nullopt;
    }
    const keys::ByteView name = bytes.subspan(lengthBytes, length);
    const keys::ByteView answer = bytes.subspan(lengthBytes + length);
    auto statement = journal::statementOf(answer);
    if (!statement) {
        return std::nullopt;
    }
    return SignedHere{
        std::string(name.begin(), name.end()), {answer.begin(), answer.end()}, std::move(statement).value()};
}

std::string textAt(const std::map<std::string, keys::Bytes>& notes, const char* name)
{
    const auto found = notes.find(name);
    return found == notes.end() ? std::string() : std::string(found->second.begin(), found->second.end());
}

} // namespace

bool PreceptorVault::fits(const vault::Contents& contents)
{
    const bool ofProgram = contents.notes.contains(notes::program) || contents.notes.contains(notes::person) ||
                           !contents.certificates.empty() || !contents.entries.empty();
    return !ofProgram && (contents.damage.empty() || contents.notes.contains(notes::name));
}

base::Result<std::unique_ptr<PreceptorVault>> PreceptorVault::open(std::unique_ptr<vault::Vault> vault, Clock clock)
{
    vault::Result<vault::Contents> contents = vault->contents();
    if (!contents) {
        return vault::asError(contents.error());
    }
    return open(std::move(vault), contents.value(), std::move(clock));
}

base::Result<std::unique_ptr<PreceptorVault>> PreceptorVault::open(std::unique_ptr<vault::Vault> vault,
                                                                   const vault::Contents& contents, Clock clock)
{
    if (!fits(contents)) {
        return base::Error{base::ErrorCode::BadValue,
                           "This vault is somebody's record in a program; a preceptor's phone has one of its own."};
    }
    const vault::Result<const keys::DeviceKey*> device = vault->device();
    if (!device) {
        return vault::asError(device.error());
    }
    const keys::VerifyKey key = device.value()->signing.verifyKey();
    std::unique_ptr<PreceptorVault> own(new PreceptorVault(std::move(vault), std::move(clock), key));
    own->take(contents);
    return own;
}

void PreceptorVault::take(const vault::Contents& contents)
{
    m_owner = {textAt(contents.notes, notes::name), textAt(contents.notes, notes::credential)};
    for (const vault::Damage& damage : contents.damage) {
        m_damage.push_back("Damaged: " + damage.place + ".");
    }
    for (const auto& [name, bytes] : contents.notes) {
        const std::optional<std::uint32_t> number = numberOf(name);
        if (!number) {
            continue;
        }
        m_next = std::max(m_next, *number + 1);
        if (std::optional<SignedHere> kept = fromKept(bytes)) {
            m_signed.push_back(std::move(*kept));
        } else {
            m_damage.push_back("Not readable: number " + std::to_string(*number + 1) + " of what was signed here.");
        }
    }
}

base::Result<bool> PreceptorVault::setOwner(const SignerName& owner)
{
    vault::Change change;
    for (const auto& [note, text] : {std::pair{notes::name, owner.name}, {notes::credential, owner.credential}}) {
        const keys::ByteView bytes = keys::bytesOf(text);
        change.notes[note] = text.empty() ? std::nullopt : std::optional(keys::Bytes(bytes.begin(), bytes.end()));
    }
    if (const vault::Result<bool> saved = m_vault->save(change); !saved) {
        return vault::asError(saved.error());
    }
    m_owner = owner;
    return true;
}

base::Result<keys::Bytes> PreceptorVault::sign(const journal::SigningRequest& request, const SignerName& signer,
                                               const SheetMarks& sheet)
{
    const vault::Result<const keys::DeviceKey*> device = m_vault->device();
    if (!device) {
        return vault::asError(device.error());
    }
    base::Result<keys::Bytes> answer = answerRequest(*device.value(), request, signer, sheet, m_clock());
    if (!answer) {
        return answer;
    }
    keys::Bytes kept = keptForm(request.studentName, answer.value());
    std::optional<SignedHere> readBack = fromKept(kept);
    if (!readBack) {
        return base::Error{base::ErrorCode::BadValue, "What was signed cannot be read back; nothing was signed."};
    }
    vault::Change change;
    change.notes[noteOf(m_next)] = std::move(kept);
    if (const vault::Result<bool> saved = m_vault->save(change); !saved) {
        return vault::asError(saved.error());
    }
    ++m_next;
    m_signed.push_back(std::move(*readBack));
    return answer;
}

base::Result<OpenedVault> openWhosever(std::unique_ptr<vault::Vault> vault, Clock clock, keys::RandomSource& random)
{
    vault::Result<vault::Contents> contents = vault->contents();
    if (!contents) {
        return vault::asError(contents.error());
    }
    OpenedVault opened;
    if (PreceptorVault::fits(contents.value())) {
        auto own = PreceptorVault::open(std::move(vault), contents.value(), std::move(clock));
        if (!own) {
            return own.error();
        }
        opened.preceptor = std::move(own).value();
    } else {
        auto session = Session::open(std::move(vault), std::move(contents).value(), std::move(clock), random);
        if (!session) {
            return session.error();
        }
        opened.session = std::move(session).value();
    }
    return opened;
}

} // namespace peelpack::session
