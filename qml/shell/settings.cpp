#include "qml/shell/settings.h"

#include "qml/parts/look.h"

#include <QLocale>

#include <algorithm>

namespace peelpack::shell {

Settings::Settings(const QString& file, QObject* parent) : QObject(parent), m_file(file, QSettings::IniFormat) {}

void Settings::dress(parts::Look* look)
{
    m_look = look;
    if (look != nullptr) {
        look->setPrefersDark(theme() == Dark);
        look->setTextScale(textPercent() / 100.0);
        look->setCalm(calm());
        look->setLeftHand(leftHand());
    }
}

int Settings::number(const char* name, int usual) const
{
    bool good = false;
    const int value = m_file.value(QString::fromLatin1(name)).toInt(&good);
    return good ? value : usual;
}

void Settings::put(const char* name, int value)
{
    m_file.setValue(QString::fromLatin1(name), value);
    dress(m_look);
    Q_EMIT changed();
}

void Settings::setTextPercent(int percent)
{
    put("textPercent", std::clamp(percent, 100, 200));
}

QString Settings::language() const
{
    const QString usual =
        QLocale::system().language() == QLocale::Spanish ? QStringLiteral("es") : QStringLiteral("en");
    const QString set = m_file.value(QStringLiteral("language"), usual).toString();
    return set == QStringLiteral("es") ? set : QStringLiteral("en");
}

void Settings::setLanguage(const QString& language)
{
    if (language != this->language()) {
        m_file.setValue(QStringLiteral("language"), language);
        Q_EMIT languageChanged();
        Q_EMIT changed();
    }
}

void Settings::setLockMinutes(int minutes)
{
    put("lockMinutes", std::clamp(minutes, 1, 30));
}

} // namespace peelpack::shell
