#include "platform/evidence/members.h"

#include <algorithm>

namespace peelpack::evidence {
namespace {

const Json emptyObject = Json::object();
const Json emptyList = Json::array();

bool isControl(char c)
{
    constexpr char rubout = 0x7F;
    return (static_cast<unsigned char>(c) < ' ' && c != '\n') || c == rubout;
}

} // namespace

Members::Members(const Json& object, std::string place, std::initializer_list<std::string_view> known)
    : m_object(object.is_object() ? &object : &emptyObject), m_place(std::move(place))
{
    if (!object.is_object()) {
        m_fault = m_place + " is no object.";
    }
    for (const auto& [name, value] : m_object->items()) {
        if (std::find(known.begin(), known.end(), name) == known.end()) {
            m_fault = m_place + " says something that this version does not know: " + name + ".";
        }
    }
}

const Json* Members::find(const char* member) const
{
    const auto found = m_object->find(member);
    return found == m_object->end() ? nullptr : &*found;
}

void Members::refuse(const std::string& member)
{
    if (m_fault.empty()) {
        m_fault = m_place + " has no usable \"" + member + "\".";
    }
}

void Members::add(const Members& part)
{
    if (m_fault.empty()) {
        m_fault = part.fault();
    }
}

std::string Members::text(const char* member, std::size_t most)
{
    std::string value = note(member, most);
    if (value.empty()) {
        refuse(member);
    }
    return value;
}

std::string Members::note(const char* member, std::size_t most)
{
    const Json* value = find(member);
    if (value == nullptr || !value->is_string()) {
        refuse(member);
        return {};
    }
    const auto& text = value->get_ref<const std::string&>();
    if (text.size() > most || std::any_of(text.begin(), text.end(), isControl)) {
        refuse(member);
        return {};
    }
    return text;
}

void Members::exactly(const char* member, const Json& wanted)
{
    const Json* value = find(member);
    if (value == nullptr || *value != wanted) {
        refuse(member);
    }
}

std::uint32_t Members::number(const char* member, std::uint32_t most)
{
    const Json* value = find(member);
    if (value == nullptr || !value->is_number_unsigned() || value->get<std::uint64_t>() > most) {
        refuse(member);
        return 0;
    }
    return value->get<std::uint32_t>();
}

base::Date Members::date(const char* member)
{
    const auto date = base::Date::fromIso(text(member));
    if (!date) {
        refuse(member);
    }
    return date.value_or(base::Date());
}

const Json& Members::object(const char* member)
{
    const Json* value = find(member);
    if (value == nullptr || !value->is_object()) {
        refuse(member);
        return emptyObject;
    }
    return *value;
}

const Json& Members::list(const char* member, std::size_t least, std::size_t most)
{
    const Json* value = find(member);
    if (value == nullptr || !value->is_array() || value->size() < least || value->size() > most) {
        refuse(member);
        return emptyList;
    }
    return *value;
}

} // namespace peelpack::evidence
