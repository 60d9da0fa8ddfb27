#include "app/gui/desk.h"

namespace flowkin {

Desk::Desk(const DeskOptions& options, QObject* parent)
    : QObject(parent),
      preferences_(new Preferences(options.settings_path, this)),
      board_(new BenchBoard(options.store_path, preferences_, this)),
      clips_(new ClipQueue(board_, preferences_, this)),
      camera_(new Camera(preferences_, {}, this)) {}

Desk::~Desk() = default;

void Desk::watch(const QUrl& folder) {
  preferences_->setWatchedFolder(folder.toLocalFile());
}

}  // namespace flowkin
