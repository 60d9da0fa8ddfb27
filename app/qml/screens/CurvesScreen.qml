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
    // So many points that they would hide the line through them.
    property bool dense: false

    function fill() {
        switch (what.currentIndex) {
        case 0: curves.fillPath(points, line, low, high); break
        case 1: curves.fillFilm(film.currentIndex, points, line, low, high); break
        default: curves.fillBrand(brand.currentIndex, points, line, low, high)
        }
        dense = points.count > 30
        drawIntervals()
        drawMatch(matchLow, curves.matchLow)
        drawMatch(matchHigh, curves.matchHigh)
        showAll()
    }
    function showAll() {
        chart.zoomReset()
        across.min = curves.left
        across.max = curves.right
        up.min = curves.bottom
        up.max = curves.top
    }
    // An axis takes its title's colour from the text alone.
    function inked(text: string): string {
        return "<span style='color:" + Theme.ink + "'>" + text + "</span>"
    }
    // An edge of the match band, farther than anybody pans.
    function drawMatch(edge: LineSeries, ratio: real) {
        edge.clear()
        edge.append(curves.left - 1000, ratio)
        edge.append(curves.right + 1000, ratio)
    }
    // One upright line for each measured point.
    function drawIntervals() {
        for (const old of chart.bars)
            chart.removeSeries(old)
        chart.bars = curves.intervals.map(interval => {
            const bar = chart.createSeries(ChartView.SeriesTypeLine, "", across, up)
            bar.color = Theme.ink
            bar.width = Theme.px(3)
            bar.append(interval.x, interval.low)
            bar.append(interval.x, interval.high)
            return bar
        })
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
        function ask() {
            selectedFile = screen.desk.pictureFile(screen.curves.title)
            open()
        }
        title: qsTr("Keep the picture as")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "png"
        nameFilters: ["PNG (*.png)"]
        onAccepted: sheet.grabToImage(result => screen.desk.keepPicture(result.image, selectedFile))
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
            BigButton { text: qsTr("Farther"); onClicked: chart.zoom(0.67) }
            BigButton { text: qsTr("All of it"); onClicked: screen.showAll() }
            BigButton { objectName: "keepCurve"; enabled: sheet.visible; text: qsTr("Keep as picture …"); onClicked: save.ask() }
        }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            text: screen.curves.nothing
            font.pixelSize: Theme.large
        }
        // What is kept as a picture: with its title and the key to it.
        Panel {
            id: sheet
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: Theme.px(330)
            visible: screen.curves.nothing.length === 0
            ColumnLayout {
                anchors { fill: parent; margins: Theme.px(8) }
                spacing: 0
                Words {
                    objectName: "curveTitle"
                    Layout.fillWidth: true
                    Layout.leftMargin: Theme.gap
                    text: screen.curves.title
                    font.pixelSize: Theme.large
                    font.bold: true
                }
                ChartView {
                    id: chart
                    property var bars: []
                    objectName: "chart"
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    antialiasing: true
                    legend.visible: false
                    localizeNumbers: true
                    backgroundColor: Theme.card
                    plotAreaColor: Theme.card
                    backgroundRoundness: 0
                    Accessible.role: Accessible.Chart
                    Accessible.name: what.currentText + ", " + screen.curves.title

                    ValuesAxis {
                        id: across
                        tickType: ValuesAxis.TicksDynamic
                        tickInterval: screen.curves.step(min, max)
                        titleText: screen.inked(screen.curves.across)
                        color: Theme.quiet
                        labelsColor: Theme.ink
                        labelsFont.pixelSize: Theme.small
                        titleFont.pixelSize: Theme.small
                        gridLineColor: Theme.line
                    }
                    ValuesAxis {
                        id: up
                        tickType: ValuesAxis.TicksDynamic
                        tickInterval: screen.curves.step(min, max)
                        titleText: screen.inked(screen.curves.up)
                        color: Theme.quiet
                        labelsColor: Theme.ink
                        labelsFont.pixelSize: Theme.small
                        titleFont.pixelSize: Theme.small
                        gridLineColor: Theme.line
                    }
                    AreaSeries {
                        id: match
                        axisX: across
                        axisY: up
                        visible: screen.curves.matchLow < screen.curves.matchHigh
                        color: Theme.deep
                        opacity: 0.35
                        borderWidth: 0
                        lowerSeries: LineSeries { id: matchLow }
                        upperSeries: LineSeries { id: matchHigh }
                    }
                    AreaSeries {
                        axisX: across
                        axisY: up
                        color: Theme.quiet
                        opacity: 0.3
                        borderWidth: 0
                        lowerSeries: LineSeries { id: low }
                        upperSeries: LineSeries { id: high }
                    }
                    ScatterSeries { id: points; axisX: across; axisY: up; color: Theme.warm; borderColor: screen.dense ? Theme.warm : Theme.ink; markerSize: Theme.px(screen.dense ? 6 : 14) }
                    LineSeries { id: line; axisX: across; axisY: up; color: Theme.deep; width: Theme.px(4) }
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
                Flow {
                    Layout.fillWidth: true
                    Layout.leftMargin: Theme.gap
                    spacing: Theme.edge
                    Repeater {
                        model: [
                            { "mark": "●", "tint": Theme.warm, "word": screen.curves.pointsWord },
                            { "mark": "━", "tint": Theme.deep, "word": screen.curves.lineWord },
                            { "mark": "▒", "tint": Theme.quiet, "word": screen.curves.shadeWord },
                            { "mark": "▒", "tint": Theme.deep, "word": match.visible ? qsTr("match") : "" }
                        ]
                        Row {
                            id: entry
                            required property var modelData
                            visible: entry.modelData["word"].length > 0
                            spacing: Theme.px(6)
                            Words { text: entry.modelData["mark"]; color: entry.modelData["tint"]; Accessible.ignored: true }
                            Words { text: entry.modelData["word"]; wrapMode: Text.NoWrap; font.pixelSize: Theme.small }
                        }
                    }
                }
            }
        }
        Item {
            Layout.fillHeight: true
            visible: !sheet.visible
        }
    }
}
