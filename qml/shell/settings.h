#pragma once

#include <QObject>
#include <QQmlEngine>
#include <QSettings>

namespace peelpack::parts {
class Look;
}

namespace peelpack::shell {

/// How this person wants the app on this device: nothing of it is part of the journal, and nothing of it is secret.
class Settings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(int theme READ theme WRITE setTheme NOTIFY changed)
    Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)
    Q_PROPERTY(bool calm READ calm WRITE setCalm NOTIFY changed)
    Q_PROPERTY(bool leftHand READ leftHand WRITE setLeftHand NOTIFY changed)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
    Q_PROPERTY(int lockMinutes READ lockMinutes WRITE setLockMinutes NOTIFY changed)

public:
    enum Theme { Light, Dark };
    Q_ENUM(Theme)

    explicit Settings(const QString& file, QObject* parent = nullptr);

    /// Shows what is set; whenever something is changed, too.
    void dress(parts::Look* look);

    [[nodiscard]] int theme() const { return number("theme", Light); }
    void setTheme(int theme) { put("theme", theme == Dark ? Dark : Light); }
    [[nodiscard]] int textPercent() const { return number("textPercent", 100); } ///< 100 to 200
    void setTextPercent(int percent);
    [[nodiscard]] bool calm() const { return number("calm", 0) != 0; }
    void setCalm(bool calm) { put("calm", calm ? 1 : 0); }
    [[nodiscard]] bool leftHand() const { return number("leftHand", 0) != 0; }
    void setLeftHand(bool left) { put("leftHand", left ? 1 : 0); }
    /// "en" or "es".
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& language);
    /// After how long without a touch the phone locks; 1 to 30.
    [[nodiscard]] int lockMinutes() const { return number("lockMinutes", 2); }
    void setLockMinutes(int minutes);

Q_SIGNALS:
    void changed();
    void languageChanged();

private:
    [[nodiscard]] int number(const char* name, int usual) const;
    void put(const char* name, int value);

    QSettings m_file;
    parts::Look* m_look = nullptr;
};

} // namespace peelpack::shell
