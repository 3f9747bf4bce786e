#pragma once

#include "qml/parts/look.h"
#include "qml/shell/phone.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTranslator>

#include <memory>

namespace peelpack::app {

/// The compiled-in font and the Basic style: the same look on every system. Call once, after the application is made.
void dressApplication();

/// The one window over a phone, in the language and look of its settings.
class Window : public QObject {
    Q_OBJECT

public:
    /// `phone` must outlive it.
    explicit Window(shell::Phone& phone, QObject* parent = nullptr);
    ~Window() override;

    /// Null when the screens could not be loaded; why is on standard error.
    [[nodiscard]] QQuickWindow* window() const;
    [[nodiscard]] parts::Look* look();

protected:
    /// Touches and keys begin the time until the phone locks anew.

private:
    void speak();

    shell::Phone& m_phone;
    QTranslator m_words;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
};

} // namespace peelpack::app
