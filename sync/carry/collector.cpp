#include "sync/carry/collector.h"

#include <algorithm>
#include <bit>
#include <cstring>

namespace peelpack::carry {
namespace {

constexpr std::size_t mostReadings = 4;
constexpr std::size_t mostDone = 64;
constexpr std::size_t wordBytes = 8;
constexpr std::size_t wordBits = 64;

std::size_t wordsFor(std::size_t count, std::size_t each)
{
    return (count + each - 1) / each;
}

/// The first piece of the row from `from` on; `count` when there is none.
std::size_t firstPiece(const std::vector<std::uint64_t>& row, std::size_t from, std::size_t count)
{
    for (std::size_t word = from / wordBits; word * wordBits < count; ++word) {
        const std::uint64_t skipped =
            word == from / wordBits ? ~std::uint64_t{0} << (from % wordBits) : ~std::uint64_t{0};
        if (const std::uint64_t bits = row[word] & skipped; bits != 0) {
            return word * wordBits + static_cast<std::size_t>(std::countr_zero(bits));
        }
    }
    return count;
}

void addTo(std::vector<std::uint64_t>& row, const std::vector<std::uint64_t>& other)
{
    for (std::size_t i = 0; i < row.size(); ++i) {
        row[i] ^= other[i];
    }
}

} // namespace

Offered Collector::offer(keys::ByteView code)
{
    const auto read = readFrame(code);
    if (!read) {
        return {Offered::Sort::Unusable, read.reason(), {}};
    }
    const Frame& frame = read.value();
    const Key key{frame.parcel, frame.length, frame.count};
    if (isDone(key)) {
        m_progress = Progress{key.parcel, key.count, key.count};
        return {Offered::Sort::Known, journal::Reason::None, {}};
    }
    Reading& reading = readingOf(key);
    Offered::Sort sort = add(reading, key, rowOf(frame));
    m_progress = Progress{key.parcel, reading.rows.size(), key.count};
    keys::Bytes parcel;
    if (sort != Offered::Sort::StartedAnew && reading.rows.size() == key.count) {
        parcel = solve(reading, key);
        sort = parcel.empty() ? Offered::Sort::StartedAnew : Offered::Sort::Complete;
    }
    if (sort == Offered::Sort::StartedAnew) {
        m_readings.erase(key);
        m_progress.reset();
    } else if (sort == Offered::Sort::Complete) {
        m_readings.erase(key);
        m_done.push_back(key);
        if (m_done.size() > mostDone) {
            m_done.pop_front();
        }
    }
    return {sort, journal::Reason::None, std::move(parcel)};
}

void Collector::forgetComplete()
{
    m_done.clear();
    if (m_progress && m_progress->have == m_progress->of) {
        m_progress.reset();
    }
}

std::vector<Progress> Collector::unfinished() const
{
    std::vector<Progress> list;
    for (const auto& [key, reading] : m_readings) {
        list.push_back({key.parcel, reading.rows.size(), key.count});
    }
    return list;
}

bool Collector::isDone(const Key& key) const
{
    return std::find(m_done.begin(), m_done.end(), key) != m_done.end();
}

Collector::Reading& Collector::readingOf(const Key& key)
{
    if (!m_readings.contains(key) && m_readings.size() == mostReadings) {
        m_readings.erase(std::min_element(m_readings.begin(), m_readings.end(), [](const auto& a, const auto& b) {
            return a.second.latest < b.second.latest;
        }));
    }
    Reading& reading = m_readings[key];
    reading.latest = ++m_now;
    return reading;
}

Collector::Row Collector::rowOf(const Frame& frame)
{
    Row row = piecesOf(frame.parcel, frame.count, frame.number);
    const std::size_t bitWords = row.size();
    row.resize(bitWords + wordsFor(frame.piece.size(), wordBytes));
    std::memcpy(row.data() + bitWords, frame.piece.data(), frame.piece.size());
    return row;
}

Offered::Sort Collector::add(Reading& reading, const Key& key, Row row)
{
    for (std::size_t piece = firstPiece(row, 0, key.count); piece < key.count;
         piece = firstPiece(row, piece + 1, key.count)) {
        const auto held = reading.rows.find(piece);
        if (held == reading.rows.end()) {
            reading.rows.emplace(piece, std::move(row));
            return Offered::Sort::Taken;
        }
        addTo(row, held->second);
    }
    const bool agrees = std::all_of(row.begin(), row.end(), [](std::uint64_t word) { return word == 0; });
    return agrees ? Offered::Sort::Known : Offered::Sort::StartedAnew;
}

/// Empty: not the parcel of this id.
keys::Bytes Collector::solve(Reading& reading, const Key& key)
{
    for (std::size_t piece = key.count; piece-- > 0;) {
        Row& row = reading.rows.at(piece);
        for (std::size_t later = firstPiece(row, piece + 1, key.count); later < key.count;
             later = firstPiece(row, later + 1, key.count)) {
            addTo(row, reading.rows.at(later));
        }
    }
    const std::size_t size = pieceBytes(key.length, key.count);
    const std::size_t bitWords = wordsFor(key.count, wordBits);
    keys::Bytes parcel(size * key.count);
    for (const auto& [piece, row] : reading.rows) {
        std::memcpy(parcel.data() + piece * size, row.data() + bitWords, size);
    }
    const bool isFilledUp = std::all_of(parcel.begin() + key.length, parcel.end(), [](auto byte) { return byte == 0; });
    parcel.resize(key.length);
    return isFilledUp && parcelId(parcel) == key.parcel ? parcel : keys::Bytes{};
}

} // namespace peelpack::carry
