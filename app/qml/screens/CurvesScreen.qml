import QtCharts
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Flowkin

// Plots: a film's series, a cup's path, a brand's curve.
Item {
    id: screen

    required property Desk desk
    readonly property Curves curves: desk.curves

    function fill() {
        switch (what.currentIndex) {
        case 0: curves.fillPath(points, line, low, high); break
        case 1: curves.fillFilm(film.currentIndex, points, line, low, high); break
        default: curves.fillBrand(brand.currentIndex, points, line, low, high)
        }
        chart.zoomReset()
        across.min = curves.left
        across.max = curves.right
        up.min = curves.bottom
        up.max = curves.top
    }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Curves")
    Component.onCompleted: fill()
    Connections {
        target: screen.desk.board
        function onChanged() { screen.fill() }
    }
    FileDialog {
        id: save
        title: qsTr("Keep the picture as")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "png"
        nameFilters: ["PNG (*.png)"]
        onAccepted: chart.grabToImage(result => screen.desk.keepPicture(result.image, selectedFile))
    }

    Scroller {
        objectName: "curvesScroller"
        anchors.fill: parent
        fills: true
        margin: Theme.edge
        spacing: Theme.px(8)
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            Choice {
                id: what
                objectName: "curveKind"
                label: qsTr("What to plot")
                width: Theme.px(250)
                model: [qsTr("the cup's path"), qsTr("one film"), qsTr("what a brand does")]
                onActivated: screen.fill()
            }
            Choice {
                visible: what.currentIndex < 2
                label: qsTr("Which cup")
                width: Theme.px(200)
                model: screen.desk.board.cupNames
                currentIndex: screen.desk.board.chosen
                onActivated: index => screen.desk.board.chosen = index
            }
            Choice {
                id: film
                visible: what.currentIndex === 1
                label: qsTr("Which film")
                width: Theme.px(220)
                model: screen.curves.films
                onActivated: screen.fill()
            }
            Choice {
                id: brand
                visible: what.currentIndex === 2
                label: qsTr("Which brand")
                width: Theme.px(220)
                model: screen.curves.brands
                onActivated: screen.fill()
            }
            BigButton { text: qsTr("Closer"); onClicked: chart.zoom(1.5) }
            BigButton { text: qsTr("All of it"); onClicked: screen.fill() }
            BigButton { objectName: "keepCurve"; text: qsTr("Keep as picture …"); onClicked: save.open() }
        }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            text: screen.curves.nothing
            font.pixelSize: Theme.large
        }
        ChartView {
            id: chart
            objectName: "chart"
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: Theme.px(240)
            visible: screen.curves.nothing.length === 0
            antialiasing: true
            legend.visible: false
            backgroundColor: Theme.card
            plotAreaColor: Theme.card
            backgroundRoundness: Theme.round
            Accessible.role: Accessible.Chart
            Accessible.name: what.currentText

            ValuesAxis {
                id: across
                titleText: screen.curves.across
                color: Theme.quiet
                labelsColor: Theme.ink
                labelsFont.pixelSize: Theme.small
                titleFont.pixelSize: Theme.small
                gridLineColor: Theme.line
            }
            ValuesAxis {
                id: up
                titleText: screen.curves.up
                color: Theme.quiet
                labelsColor: Theme.ink
                labelsFont.pixelSize: Theme.small
                titleFont.pixelSize: Theme.small
                gridLineColor: Theme.line
            }
            LineSeries { id: low; axisX: across; axisY: up; color: Theme.quiet; width: Theme.px(2); style: Qt.DashLine }
            LineSeries { id: high; axisX: across; axisY: up; color: Theme.quiet; width: Theme.px(2); style: Qt.DashLine }
            LineSeries { id: line; axisX: across; axisY: up; color: Theme.deep; width: Theme.px(4) }
            ScatterSeries { id: points; axisX: across; axisY: up; color: Theme.warm; borderColor: Theme.ink; markerSize: Theme.px(14) }
            MouseArea {
                anchors.fill: parent
                property point last
                onPressed: event => last = Qt.point(event.x, event.y)
                onPositionChanged: event => {
                    chart.scrollLeft(event.x - last.x)
                    chart.scrollUp(event.y - last.y)
                    last = Qt.point(event.x, event.y)
                }
                onWheel: event => chart.zoom(event.angleDelta.y > 0 ? 1.2 : 0.83)
            }
        }
        Item {
            Layout.fillHeight: true
            visible: !chart.visible
        }
    }
}
