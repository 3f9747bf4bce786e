#pragma once

#include "sync/carry/frame_source.h"

#include <QByteArray>
#include <QObject>
#include <QQmlEngine>
#include <QTimer>

#include <optional>

namespace peelpack::light {

/// A parcel as codes one after another, for another device's camera: the plain ones once, then spare ones (FORMAT.md
/// section 9). Pauses by itself where nobody can still be reading.
class RunningCodes : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a page's object")
    Q_PROPERTY(QByteArray code READ code NOTIFY changed)
    Q_PROPERTY(int number READ number NOTIFY changed)
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(QString place READ place NOTIFY changed)
    Q_PROPERTY(QString enough READ enough NOTIFY changed)
    Q_PROPERTY(QString pace READ pace NOTIFY changed)
    Q_PROPERTY(bool running READ running NOTIFY changed)
    Q_PROPERTY(bool canBeSlower READ canBeSlower NOTIFY changed)
    Q_PROPERTY(bool canBeFaster READ canBeFaster NOTIFY changed)

public:
    explicit RunningCodes(QObject* parent = nullptr);

    /// Lays the parcel ready at its first code, standing still. False: it is too large to go by light.
    bool lay(keys::Bytes parcel);
    /// Lets go of the parcel.
    Q_INVOKABLE void end();

    /// The bytes of the code that is shown; empty: no parcel is ready.
    [[nodiscard]] QByteArray code() const;
    [[nodiscard]] int number() const { return m_number; }
    /// So many codes are enough; 0: no parcel is ready.
    [[nodiscard]] int count() const { return m_source ? m_source->count() : 0; }
    /// "Code 12 of 40"
    [[nodiscard]] QString place() const;
    /// How many of them are enough.
    [[nodiscard]] QString enough() const;
    /// "5 codes a second"
    [[nodiscard]] QString pace() const;
    [[nodiscard]] bool running() const { return m_timer.isActive(); }
    [[nodiscard]] bool canBeSlower() const;
    [[nodiscard]] bool canBeFaster() const;

    /// Runs; calmly: stands still at first, and runs at the slowest pace when it is told to.
    Q_INVOKABLE void begin(bool calm);
    Q_INVOKABLE void run();
    Q_INVOKABLE void pause();
    /// The next code.
    Q_INVOKABLE void step();
    Q_INVOKABLE void slower();
    Q_INVOKABLE void faster();

Q_SIGNALS:
    void changed();
    /// A code was shown: somebody is at it.
    void shown();

private:
    void setPace(std::size_t pace);
    void showNext();

    std::optional<carry::FrameSource> m_source;
    QTimer m_timer;
    std::uint16_t m_number = 0;
    std::size_t m_pace;
    int m_left = 0; ///< codes until it pauses by itself
};

} // namespace peelpack::light
