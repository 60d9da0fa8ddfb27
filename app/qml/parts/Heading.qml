import QtQuick
import Flowkin

// What heads a part of a page.
Words {
    topPadding: Theme.gap
    font.pixelSize: Theme.large
    font.bold: true
    Accessible.role: Accessible.Heading
}
