#pragma once

#include <QObject>
#include <QString>
#include <memory>

#include "app/gui/preferences.h"

class QTextToSpeech;

namespace flowkin {

/// Says results aloud in the window's language, where a voice is installed and
/// she wants it. The engine is started with the first sentence.
class Voice : public QObject {
  Q_OBJECT

 public:
  explicit Voice(Preferences* preferences, QObject* parent = nullptr);
  ~Voice() override;

 public slots:
  void Say(const QString& sentence);

 private:
  Preferences* preferences_;
  std::unique_ptr<QTextToSpeech> speech_;
  bool tried_ = false;
};

}  // namespace flowkin
