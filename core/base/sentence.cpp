#include "core/base/sentence.h"

namespace peelpack::base {

Sentence Sentence::plain(std::string english)
{
    Sentence sentence;
    sentence.m_text = std::move(english);
    return sentence;
}

Sentence::Sentence(std::string english) : m_text(std::move(english)) {}
Sentence::Sentence(const char* english) : m_text(english) {}

Sentence Sentence::with(Sentence argument) &&
{
    m_arguments.push_back(std::move(argument));
    return std::move(*this);
}

Sentence Sentence::with(std::string argument) &&
{
    return std::move(*this).with(plain(std::move(argument)));
}

Sentence Sentence::with(const char* argument) &&
{
    return std::move(*this).with(std::string(argument));
}

Sentence Sentence::with(std::size_t number) &&
{
    return std::move(*this).with(std::to_string(number));
}

std::string Sentence::english() const
{
    if (m_arguments.empty()) {
        return m_text;
    }
    std::string filled;
    for (std::size_t i = 0; i < m_text.size(); ++i) {
        const std::size_t number = m_text[i] == '%' && i + 1 < m_text.size() && m_text[i + 1] >= '1'
                                       ? static_cast<std::size_t>(m_text[i + 1] - '1')
                                       : m_arguments.size();
        if (number < m_arguments.size()) {
            filled += m_arguments[number].english();
            ++i;
        } else {
            filled += m_text[i];
        }
    }
    return filled;
}

bool Sentence::operator==(const Sentence& other) const
{
    const auto heading = [](const Sentence& one) {
        return std::string_view(one.m_heading == nullptr ? "" : one.m_heading);
    };
    return m_text == other.m_text && m_arguments == other.m_arguments && heading(*this) == heading(other);
}

Sentence said(SourceText heading, SourceText text)
{
    Sentence sentence;
    sentence.m_heading = heading.text;
    sentence.m_text = text.text;
    return sentence;
}

std::string operator+(const std::string& before, const Sentence& sentence)
{
    return before + sentence.english();
}

std::string operator+(const Sentence& sentence, const std::string& after)
{
    return sentence.english() + after;
}

std::ostream& operator<<(std::ostream& out, const Sentence& sentence)
{
    return out << sentence.english();
}

} // namespace peelpack::base
