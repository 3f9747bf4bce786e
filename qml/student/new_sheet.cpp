#include "qml/student/new_sheet.h"

#include "core/sheet/identifiers.h"
#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTime>

#include <algorithm>
#include <map>

namespace peelpack::student {
namespace {

constexpr const char* noteName = "app.draft";
constexpr const char* favoritesName = "app.favorites";
constexpr qsizetype mostFavorites = 24;
constexpr std::size_t mostHits = 12;
constexpr qsizetype mostRecent = 6;
constexpr qsizetype mostRemembered = 4;
constexpr qsizetype mostProcedures = 4;
constexpr qsizetype mostLetters = 120;
constexpr int mostDaysAgo = 60;

/// One line of at most so many letters, composed alike on every keyboard.
QString oneLine(const QString& text, qsizetype most = mostLetters)
{
    QString line = text.left(4 * most);
    for (QChar& letter : line) {
        if (letter.isSpace() || letter.category() == QChar::Other_Control) {
            letter = QLatin1Char(' ');
        }
    }
    return line.left(most);
}

/// "7:30", "0730" and "07:30" are half past seven; anything else is not said.
journal::MinuteOfDay minuteOf(const QString& text)
{
    for (const char* form : {"H:mm", "HHmm", "Hmm"}) {
        const QTime time = QTime::fromString(text.trimmed(), QString::fromLatin1(form));
        if (time.isValid()) {
            return static_cast<journal::MinuteOfDay>(time.hour() * 60 + time.minute());
        }
    }
    return record::notSaid;
}

} // namespace

NewSheet::NewSheet(Desk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &Desk::changed, this, [this] {
        const bool untouched = !begun();
        gatherEarlier();
        if (untouched) {
            begin();
        }
    });
    for (const QJsonValue id : QJsonDocument::fromJson(m_desk.kept(favoritesName)).array()) {
        m_favorites.append(id.toString());
    }
    gatherEarlier();
    begin();
    restore();
}

template <class Value>
void NewSheet::put(Value& member, const Value& value)
{
    if (member != value) {
        member = value;
        keep();
        Q_EMIT changed();
    }
}

void NewSheet::begin()
{
    m_draft = {};
    if (!m_surgeons.isEmpty()) {
        m_draft.surgeon = m_surgeons.front();
    }
    if (!m_sites.isEmpty()) {
        m_draft.site = m_sites.front();
        const auto& sheets = m_desk.record().sheets;
        const auto latest = std::max_element(sheets.begin(), sheets.end(), [](const auto& a, const auto& b) {
            return a.content.head.date < b.content.head.date;
        });
        if (latest != sheets.end() && words::fromUtf8(latest->content.head.site) == m_draft.site) {
            m_draft.room = words::fromUtf8(latest->content.head.room);
        }
    }
    m_fresh = m_draft;
    search();
    Q_EMIT changed();
}

void NewSheet::gatherEarlier()
{
    m_surgeons.clear();
    m_sites.clear();
    m_recent.clear();
    const auto remember = [](QStringList& list, const std::string& text, qsizetype most) {
        const QString word = words::fromUtf8(text);
        if (!word.isEmpty() && list.size() < most && !list.contains(word)) {
            list.append(word);
        }
    };
    std::map<QString, int> often;
    for (const record::SheetRecord* sheet : m_desk.latestFirst()) {
        remember(m_surgeons, sheet->content.head.surgeon, mostRemembered);
        remember(m_sites, sheet->content.head.site, mostRemembered);
        for (const std::string& procedure : sheet->content.procedures) {
            remember(m_recent, procedure, mostRecent / 2);
            ++often[words::fromUtf8(procedure)];
        }
    }
    std::vector<std::pair<int, QString>> favorites;
    for (const auto& [name, count] : often) {
        if (count > 1) {
            favorites.emplace_back(-count, name);
        }
    }
    std::sort(favorites.begin(), favorites.end());
    for (const auto& favorite : favorites) {
        if (m_recent.size() < mostRecent && !m_recent.contains(favorite.second)) {
            m_recent.append(favorite.second);
        }
    }
}

void NewSheet::restore()
{
    const QJsonObject kept = QJsonDocument::fromJson(m_desk.kept(noteName)).object();
    if (kept.isEmpty()) {
        return;
    }
    m_draft.query = kept["query"].toString();
    m_draft.procedures.clear();
    for (const QJsonValue procedure : kept["procedures"].toArray()) {
        m_draft.procedures.append(procedure.toString());
    }
    m_draft.onePathology = kept["onePathology"].toBool();
    m_draft.canceled = kept["canceled"].toBool();
    m_draft.surgeon = kept["surgeon"].toString();
    m_draft.site = kept["site"].toString();
    m_draft.room = kept["room"].toString();
    m_draft.start = kept["start"].toString();
    m_draft.end = kept["end"].toString();
    const base::Date day = base::Date::fromDays(kept["day"].toInt());
    m_draft.daysAgo = std::clamp(m_desk.today().days() - day.days(), 0, mostDaysAgo);
    search();
    Q_EMIT changed();
}

void NewSheet::keep()
{
    if (!begun()) {
        m_error = m_desk.keep(noteName, {});
        return;
    }
    const QJsonObject draft{{"query", m_draft.query},
                            {"procedures", QJsonArray::fromStringList(m_draft.procedures)},
                            {"onePathology", m_draft.onePathology},
                            {"canceled", m_draft.canceled},
                            {"surgeon", m_draft.surgeon},
                            {"site", m_draft.site},
                            {"room", m_draft.room},
                            {"start", m_draft.start},
                            {"end", m_draft.end},
                            {"day", date().days()}};
    m_error = m_desk.keep(noteName, QJsonDocument(draft).toJson(QJsonDocument::Compact));
}

void NewSheet::setQuery(const QString& query)
{
    const QString line = oneLine(query);
    if (line == m_draft.query) {
        return;
    }
    m_draft.query = line;
    search();
    keep();
    Q_EMIT changed();
}

void NewSheet::search()
{
    std::vector<ProcedureRow> rows;
    const auto add = [&](const catalogue::Procedure& procedure, const std::string& matched) {
        const QString id = words::fromUtf8(procedure.id);
        if (std::any_of(rows.begin(), rows.end(), [&](const ProcedureRow& row) { return row.id == id; })) {
            return;
        }
        QStringList specialties;
        for (const catalogue::Category category : procedure.categories) {
            specialties.append(words::of(category));
        }
        rows.push_back({id, words::fromUtf8(procedure.name),
                        matched == procedure.name ? QString() : words::fromUtf8(matched),
                        specialties.join(QStringLiteral(" · ")), m_favorites.contains(id)});
    };
    if (searching()) {
        for (const catalogue::Hit& hit :
             m_desk.shelf().search().find(words::line(m_draft.query, mostLetters), mostHits)) {
            add(*hit.procedure, hit.matched);
        }
        // Favorites come first among what fits, then what the student does often.
        const auto others =
            std::stable_partition(rows.begin(), rows.end(), [](const ProcedureRow& row) { return row.favorite; });
        std::stable_partition(others, rows.end(), [&](const ProcedureRow& row) { return m_recent.contains(row.name); });
    } else {
        for (const QString& id : m_favorites) {
            if (const catalogue::Procedure* procedure = m_desk.shelf().catalogue().byId(id.toStdString())) {
                add(*procedure, procedure->name);
            }
        }
        for (const QString& name : m_recent) {
            const auto found = m_desk.shelf().catalogue().byExactName(name.toStdString());
            if (found.size() == 1) {
                add(*found.front(), found.front()->name);
            }
        }
    }
    m_hits.put(std::move(rows));
    Q_EMIT searched();
}

void NewSheet::favor(const QString& id, bool favorite)
{
    m_favorites.removeAll(id);
    if (favorite) {
        m_favorites.prepend(id);
        m_favorites = m_favorites.mid(0, mostFavorites);
    }
    m_error = m_desk.keep(favoritesName,
                          m_favorites.isEmpty()
                              ? QByteArray()
                              : QJsonDocument(QJsonArray::fromStringList(m_favorites)).toJson(QJsonDocument::Compact));
    search();
    Q_EMIT changed();
}

void NewSheet::take(const QString& name)
{
    const QString line = oneLine(name).simplified();
    if (line.isEmpty() || m_draft.procedures.contains(line) || m_draft.procedures.size() >= mostProcedures) {
        return;
    }
    m_draft.procedures.append(line);
    m_draft.query.clear();
    search();
    keep();
    Q_EMIT changed();
}

void NewSheet::takeTyped()
{
    take(m_draft.query);
}

void NewSheet::remove(int index)
{
    if (index >= 0 && index < m_draft.procedures.size()) {
        m_draft.procedures.removeAt(index);
        m_draft.onePathology = m_draft.onePathology && m_draft.procedures.size() > 1;
        keep();
        Q_EMIT changed();
    }
}

void NewSheet::setOnePathology(bool one)
{
    put(m_draft.onePathology, one);
}
void NewSheet::setCanceled(bool canceled)
{
    put(m_draft.canceled, canceled);
}
void NewSheet::setSurgeon(const QString& surgeon)
{
    put(m_draft.surgeon, oneLine(surgeon));
}
void NewSheet::setSite(const QString& site)
{
    put(m_draft.site, oneLine(site));
}
void NewSheet::setRoom(const QString& room)
{
    put(m_draft.room, oneLine(room));
}
void NewSheet::setStart(const QString& start)
{
    put(m_draft.start, oneLine(start, 5));
}
void NewSheet::setEnd(const QString& end)
{
    put(m_draft.end, oneLine(end, 5));
}
void NewSheet::setDaysAgo(int days)
{
    put(m_draft.daysAgo, std::clamp(days, 0, mostDaysAgo));
}

base::Date NewSheet::date() const
{
    return base::Date::fromDays(m_desk.today().days() - m_draft.daysAgo);
}

QString NewSheet::day() const
{
    return m_draft.daysAgo == 0 ? tr("Today, %1").arg(words::day(date(), m_desk.today())) : words::longDay(date());
}

QString NewSheet::whenAndWhere() const
{
    QStringList parts{words::day(date(), m_desk.today())};
    for (const QString& part : {m_draft.site, m_draft.room}) {
        if (!part.simplified().isEmpty()) {
            parts.append(part.simplified());
        }
    }
    return parts.join(QStringLiteral(" · "));
}

QString NewSheet::duplicate() const
{
    for (const record::SheetRecord& sheet : m_desk.record().sheets) {
        const bool gone =
            sheet.standing == record::SheetStanding::Withdrawn || sheet.standing == record::SheetStanding::Void;
        if (gone || sheet.content.head.date != date()) {
            continue;
        }
        for (const std::string& procedure : sheet.content.procedures) {
            const QString name = words::fromUtf8(procedure);
            if (m_draft.procedures.contains(name)) {
                return tr("You have a sheet of this day for \"%1\" already. Is this another case?").arg(name);
            }
        }
    }
    return {};
}

QString NewSheet::identifiers() const
{
    QStringList texts = m_draft.procedures;
    texts << m_draft.query << m_draft.site << m_draft.room;
    for (const QString& text : texts) {
        const std::vector<sheet::IdentifierHit> hits = sheet::findIdentifiers(text.toStdString());
        if (!hits.empty()) {
            return tr("\"%1\" looks like %2. No patient names, numbers, ages or birth dates belong on a sheet.")
                .arg(text.left(40), words::of(hits.front().kind));
        }
    }
    return {};
}

QString NewSheet::save()
{
    if (!ready()) {
        return {};
    }
    journal::SheetOpened opened;
    session::Session& session = m_desk.session();
    opened.sheet = session.random().id();
    opened.operation = session.random().id();
    for (const QString& procedure : m_draft.procedures) {
        opened.draft.procedures.push_back(words::line(procedure, mostLetters));
    }
    opened.draft.head = {date(),
                         words::line(m_draft.surgeon, mostLetters),
                         words::line(m_draft.site, mostLetters),
                         words::line(m_draft.room, mostLetters),
                         minuteOf(m_draft.start),
                         minuteOf(m_draft.end),
                         m_draft.canceled};
    std::vector<journal::Payload> payloads{opened};
    if (m_draft.onePathology && opened.draft.procedures.size() > 1) {
        journal::Logged logged{opened.sheet, {}};
        for (std::size_t i = 0; i < opened.draft.procedures.size(); ++i) {
            const auto found = m_desk.shelf().catalogue().byExactName(opened.draft.procedures[i]);
            if (found.size() == 1) {
                logged.choices.push_back(
                    {static_cast<std::uint8_t>(i), std::string(catalogue::id(found.front()->categories.front())), 1});
            }
        }
        if (logged.choices.size() == opened.draft.procedures.size()) {
            payloads.emplace_back(logged);
        }
    }
    m_error = m_desk.write(payloads);
    if (!m_error.isEmpty()) {
        Q_EMIT changed();
        return {};
    }
    discard();
    return words::fromUtf8(session::idOf(opened.sheet).hex());
}

void NewSheet::discard()
{
    begin();
    keep();
    Q_EMIT changed();
}

} // namespace peelpack::student
