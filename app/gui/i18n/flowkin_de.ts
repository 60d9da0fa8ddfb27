<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>BoardScreen</name>
        <message>
            <source>Bench</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>New cup</source>
            <translation>Neuer Becher</translation>
        </message>
        <message>
            <source>Base coat</source>
            <translation>Grundfarbe</translation>
        </message>
        <message>
            <source>Start with the base coat: everything else is compared with it. Stir it, then film how it runs off a stick.</source>
            <translation>Mit der Grundfarbe anfangen: alles andere wird mit ihr verglichen. Umrühren, dann filmen, wie sie vom Stab läuft.</translation>
        </message>
        <message>
            <source>Try it first without paint</source>
            <translation>Erst ohne Farbe ausprobieren</translation>
        </message>
        <message>
            <source>Stirred</source>
            <translation>Gerührt</translation>
        </message>
        <message>
            <source>Next cup</source>
            <translation>Nächster Becher</translation>
        </message>
        <message>
            <source>Change</source>
            <translation>Ändern</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
    </context>
    <context>
        <name>ClipsScreen</name>
        <message>
            <source>Clips</source>
            <translation>Clips</translation>
        </message>
        <message>
            <source>Clips of one cup</source>
            <translation>Clips eines Bechers</translation>
        </message>
        <message>
            <source>Clips (*.mp4 *.mov *.m4v *.mkv *.avi *.webm *.3gp)</source>
            <translation>Clips (*.mp4 *.mov *.m4v *.mkv *.avi *.webm *.3gp)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Folder that the phone's clips arrive in</source>
            <translation>Ordner, in dem die Clips vom Telefon ankommen</translation>
        </message>
        <message>
            <source>Drop clips here</source>
            <translation>Clips hier ablegen</translation>
        </message>
        <message>
            <source>One test per clip, the file as the camera made it.</source>
            <translation>Eine Probe je Clip, die Datei so, wie die Kamera sie gemacht hat.</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Welcher Becher</translation>
        </message>
        <message>
            <source>Which test</source>
            <translation>Welche Probe</translation>
        </message>
        <message>
            <source>stream off the stick</source>
            <translation>Strahl vom Stab</translation>
        </message>
        <message>
            <source>ribbon that levels</source>
            <translation>Band, das verläuft</translation>
        </message>
        <message>
            <source>puddle that spreads</source>
            <translation>Pfütze, die sich ausbreitet</translation>
        </message>
        <message>
            <source>Choose clips …</source>
            <translation>Clips wählen …</translation>
        </message>
        <message>
            <source>Stop watching the folder</source>
            <translation>Ordner nicht mehr beobachten</translation>
        </message>
        <message>
            <source>Watch a folder …</source>
            <translation>Ordner beobachten …</translation>
        </message>
        <message>
            <source>Stop all</source>
            <translation>Alle anhalten</translation>
        </message>
        <message>
            <source>Clear the list</source>
            <translation>Liste leeren</translation>
        </message>
        <message>
            <source>Watching %1: new clips appear below.</source>
            <translation>%1 wird beobachtet: neue Clips erscheinen unten.</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
    </context>
    <context>
        <name>CupCard</name>
        <message>
            <source>thinner</source>
            <translation>dünner</translation>
        </message>
        <message>
            <source>thicker</source>
            <translation>dicker</translation>
        </message>
    </context>
    <context>
        <name>CupForm</name>
        <message>
            <source>Name of the cup</source>
            <translation>Name des Bechers</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>Grundfarbe</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>Aktivator</translation>
        </message>
        <message>
            <source>How much is in it (%1)</source>
            <translation>Wie viel darin ist (%1)</translation>
        </message>
        <message>
            <source>How much is in it</source>
            <translation>Wie viel darin ist</translation>
        </message>
        <message>
            <source>Brand</source>
            <translation>Marke</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Farbton</translation>
        </message>
        <message>
            <source>Swatch</source>
            <translation>Farbfeld</translation>
        </message>
        <message>
            <source>Swatch %1</source>
            <translation>Farbfeld %1</translation>
        </message>
        <message>
            <source>Kept back unthinned (%1)</source>
            <translation>Unverdünnt aufgehoben (%1)</translation>
        </message>
        <message>
            <source>Kept back unthinned</source>
            <translation>Unverdünnt aufgehoben</translation>
        </message>
        <message>
            <source>Wanted flow, 1 = base coat</source>
            <translation>Gewünschter Fluss, 1 = Grundfarbe</translation>
        </message>
        <message>
            <source>Wanted flow</source>
            <translation>Gewünschter Fluss</translation>
        </message>
        <message>
            <source>Thinned with</source>
            <translation>Verdünnt mit</translation>
        </message>
        <message>
            <source>water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>flow additive</source>
            <translation>Fließmittel</translation>
        </message>
        <message>
            <source>pouring medium</source>
            <translation>Gießmedium</translation>
        </message>
        <message>
            <source>Put it on the bench</source>
            <translation>Auf den Tisch stellen</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>Lassen</translation>
        </message>
        <message>
            <source>Take it off the bench</source>
            <translation>Vom Tisch nehmen</translation>
        </message>
    </context>
    <context>
        <name>CurvesScreen</name>
        <message>
            <source>Curves</source>
            <translation>Kurven</translation>
        </message>
        <message>
            <source>Keep the picture as</source>
            <translation>Bild sichern als</translation>
        </message>
        <message>
            <source>What to plot</source>
            <translation>Was zeichnen</translation>
        </message>
        <message>
            <source>the cup's path</source>
            <translation>der Weg des Bechers</translation>
        </message>
        <message>
            <source>one film</source>
            <translation>ein Film</translation>
        </message>
        <message>
            <source>what a brand does</source>
            <translation>was eine Marke tut</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Welcher Becher</translation>
        </message>
        <message>
            <source>Which film</source>
            <translation>Welcher Film</translation>
        </message>
        <message>
            <source>Which brand</source>
            <translation>Welche Marke</translation>
        </message>
        <message>
            <source>Closer</source>
            <translation>Näher</translation>
        </message>
        <message>
            <source>All of it</source>
            <translation>Alles</translation>
        </message>
        <message>
            <source>Keep as picture …</source>
            <translation>Als Bild sichern …</translation>
        </message>
    </context>
    <context>
        <name>FilmScreen</name>
        <message>
            <source>Film</source>
            <translation>Filmen</translation>
        </message>
        <message>
            <source>What the camera sees</source>
            <translation>Was die Kamera sieht</translation>
        </message>
    </context>
    <context>
        <name>Formats</name>
        <message>
            <source>%1 mL</source>
            <translation>%1 ml</translation>
        </message>
        <message>
            <source>%1 tsp (%2)</source>
            <translation>%1 tsp (%2)</translation>
        </message>
        <message>
            <source>%1 fl oz</source>
            <translation>%1 fl oz</translation>
        </message>
        <message>
            <source>fl oz</source>
            <translation>fl oz</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>ml</translation>
        </message>
        <message>
            <source>%1 °F</source>
            <translation>%1 °F</translation>
        </message>
        <message>
            <source>%1 °C</source>
            <translation>%1 °C</translation>
        </message>
        <message>
            <source>°F</source>
            <translation>°F</translation>
        </message>
        <message>
            <source>°C</source>
            <translation>°C</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
    </context>
    <context>
        <name>FrameGuide</name>
        <message>
            <source>stick</source>
            <translation>Stab</translation>
        </message>
        <message>
            <source>paint</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>paint, with a lamp mirrored in it</source>
            <translation>Farbe, in der sich eine Lampe spiegelt</translation>
        </message>
        <message>
            <source>puddle</source>
            <translation>Pfütze</translation>
        </message>
        <message>
            <source>ruler</source>
            <translation>Lineal</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>flowkin bench</source>
            <translation>flowkin Arbeitstisch</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Filmen</translation>
        </message>
        <message>
            <source>Clips</source>
            <translation>Clips</translation>
        </message>
        <message>
            <source>Look again</source>
            <translation>Ansehen</translation>
        </message>
        <message>
            <source>Curves</source>
            <translation>Kurven</translation>
        </message>
        <message>
            <source>First try</source>
            <translation>Probelauf</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
    </context>
    <context>
        <name>ReviewScreen</name>
        <message>
            <source>Look again</source>
            <translation>Ansehen</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Welcher Becher</translation>
        </message>
        <message>
            <source>Which film</source>
            <translation>Welcher Film</translation>
        </message>
        <message>
            <source>no films yet</source>
            <translation>noch keine Filme</translation>
        </message>
        <message>
            <source>Count it again</source>
            <translation>Wieder zählen</translation>
        </message>
        <message>
            <source>Set this film aside</source>
            <translation>Diesen Film beiseitelegen</translation>
        </message>
        <message>
            <source>The film, with what was found</source>
            <translation>Der Film mit dem, was gefunden wurde</translation>
        </message>
        <message>
            <source>Getting the film …</source>
            <translation>Film wird geholt …</translation>
        </message>
        <message>
            <source>Frame of the film</source>
            <translation>Bild des Films</translation>
        </message>
        <message>
            <source>◂ one frame</source>
            <translation>◂ ein Bild</translation>
        </message>
        <message>
            <source>one frame ▸</source>
            <translation>ein Bild ▸</translation>
        </message>
        <message>
            <source>%1: here</source>
            <translation>%1: hier</translation>
        </message>
    </context>
    <context>
        <name>SettingsScreen</name>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Sprache</translation>
        </message>
        <message>
            <source>as the computer</source>
            <translation>wie der Rechner</translation>
        </message>
        <message>
            <source>Amounts</source>
            <translation>Mengen</translation>
        </message>
        <message>
            <source>millilitres, degrees Celsius</source>
            <translation>Milliliter, Grad Celsius</translation>
        </message>
        <message>
            <source>US teaspoons and ounces, degrees Fahrenheit</source>
            <translation>US-Teelöffel und -Unzen, Grad Fahrenheit</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <translation>Hell oder dunkel</translation>
        </message>
        <message>
            <source>light</source>
            <translation>hell</translation>
        </message>
        <message>
            <source>dark</source>
            <translation>dunkel</translation>
        </message>
        <message>
            <source>Size of everything</source>
            <translation>Größe von allem</translation>
        </message>
        <message>
            <source>Camera</source>
            <translation>Kamera</translation>
        </message>
        <message>
            <source>none found</source>
            <translation>keine gefunden</translation>
        </message>
        <message>
            <source>Picture size</source>
            <translation>Bildgröße</translation>
        </message>
        <message>
            <source>Voice</source>
            <translation>Stimme</translation>
        </message>
        <message>
            <source>say results aloud where a voice is installed</source>
            <translation>Ergebnisse vorlesen, wo eine Stimme installiert ist</translation>
        </message>
        <message>
            <source>Test on this bench</source>
            <translation>Probe auf diesem Tisch</translation>
        </message>
        <message>
            <source>stream off the stick</source>
            <translation>Strahl vom Stab</translation>
        </message>
        <message>
            <source>ribbon that levels</source>
            <translation>Band, das verläuft</translation>
        </message>
        <message>
            <source>puddle that spreads</source>
            <translation>Pfütze, die sich ausbreitet</translation>
        </message>
        <message>
            <source>Water is measured in</source>
            <translation>Wasser wird gemessen in</translation>
        </message>
        <message>
            <source>millilitres, by pipette or syringe</source>
            <translation>Millilitern, mit Pipette oder Spritze</translation>
        </message>
        <message>
            <source>drops of 0.05 mL</source>
            <translation>Tropfen zu 0,05 ml</translation>
        </message>
        <message>
            <source>pump strokes of 0.13 mL</source>
            <translation>Pumpenhüben zu 0,13 ml</translation>
        </message>
        <message>
            <source>Room (%1)</source>
            <translation>Raum (%1)</translation>
        </message>
        <message>
            <source>Room temperature</source>
            <translation>Raumtemperatur</translation>
        </message>
        <message>
            <source>Session</source>
            <translation>Sitzung</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>noch keine</translation>
        </message>
        <message>
            <source>New session</source>
            <translation>Neue Sitzung</translation>
        </message>
        <message>
            <source>Name of the new session</source>
            <translation>Name der neuen Sitzung</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Beginnen</translation>
        </message>
    </context>
    <context>
        <name>TryoutScreen</name>
        <message>
            <source>Leave it</source>
            <translation>Lassen</translation>
        </message>
    </context>
    <context>
        <name>Wording</name>
        <message>
            <source>stream</source>
            <translation>Strahl</translation>
        </message>
        <message>
            <source>ribbon</source>
            <translation>Band</translation>
        </message>
        <message>
            <source>puddle</source>
            <translation>Pfütze</translation>
        </message>
        <message>
            <source>stick lifts</source>
            <translation>Stab hebt ab</translation>
        </message>
        <message>
            <source>stream breaks</source>
            <translation>Strahl reißt ab</translation>
        </message>
        <message>
            <source>ribbon is laid</source>
            <translation>Band ist gelegt</translation>
        </message>
        <message>
            <source>puddle is poured</source>
            <translation>Pfütze ist aufgesetzt</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>Grundfarbe</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>Aktivator</translation>
        </message>
        <message>
            <source>the stream</source>
            <translation>den Strahl</translation>
        </message>
        <message>
            <source>the ribbon</source>
            <translation>das Band</translation>
        </message>
        <message>
            <source>the puddle</source>
            <translation>die Pfütze</translation>
        </message>
        <message>
            <source>of water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>of flow additive</source>
            <translation>Fließmittel</translation>
        </message>
        <message>
            <source>of pouring medium</source>
            <translation>Gießmedium</translation>
        </message>
        <message numerus="yes">
            <source>%n drop(s) %1</source>
            <translation>
                <numerusform>%n Tropfen %1</numerusform>
                <numerusform>%n Tropfen %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n pump stroke(s) %1</source>
            <translation>
                <numerusform>%n Pumpenhub %1</numerusform>
                <numerusform>%n Pumpenhübe %1</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 × %2 %3</source>
            <translation>%1 × %2 %3</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>The base coat is ready.</source>
            <translation>Die Grundfarbe ist bereit.</translation>
        </message>
        <message>
            <source>It matches. Leave it as it is.</source>
            <translation>Passt. So lassen.</translation>
        </message>
        <message numerus="yes">
            <source>Film %1 %n time(s).</source>
            <translation>
                <numerusform>%n Mal %1 filmen.</numerusform>
                <numerusform>%n Mal %1 filmen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Film %1 once more.</source>
            <translation>Noch einmal %1 filmen.</translation>
        </message>
        <message>
            <source>Stir one minute, wait 15 seconds, film %1.</source>
            <translation>Eine Minute rühren, 15 Sekunden warten, %1 filmen.</translation>
        </message>
        <message>
            <source>Add %1, stir one minute, film again.</source>
            <translation>%1 zugeben, eine Minute rühren, wieder filmen.</translation>
        </message>
        <message>
            <source>Put %1 of the unthinned mix back, stir one minute, film again.</source>
            <translation>%1 der unverdünnten Mischung zurückgeben, eine Minute rühren, wieder filmen.</translation>
        </message>
        <message>
            <source>Too thin: stir in thicker paint of this colour, a little at a time, film again.</source>
            <translation>Zu dünn: dickere Farbe dieses Tons einrühren, immer nur wenig, wieder filmen.</translation>
        </message>
        <message>
            <source>No more water: thin it further with pouring medium.</source>
            <translation>Kein Wasser mehr: mit Gießmedium weiter verdünnen.</translation>
        </message>
        <message>
            <source>Measure finer: at most %1 at once.</source>
            <translation>Feiner abmessen: höchstens %1 auf einmal.</translation>
        </message>
        <message>
            <source>This liquid is hardly thinner than the base coat; use another.</source>
            <translation>Diese Flüssigkeit ist kaum dünner als die Grundfarbe; eine andere nehmen.</translation>
        </message>
        <message>
            <source>Say how much is in this cup.</source>
            <translation>Sagen, wie viel in diesem Becher ist.</translation>
        </message>
        <message>
            <source>Film the base coat first.</source>
            <translation>Erst die Grundfarbe filmen.</translation>
        </message>
        <message>
            <source>It has not been filmed yet.</source>
            <translation>Noch nicht gefilmt.</translation>
        </message>
        <message>
            <source>Something was added since the last film.</source>
            <translation>Seit dem letzten Film wurde etwas zugegeben.</translation>
        </message>
        <message>
            <source>A few films together tell more than one.</source>
            <translation>Mehrere Filme zusammen sagen mehr als einer.</translation>
        </message>
        <message>
            <source>The films leave open which side it is on.</source>
            <translation>Die Filme lassen offen, auf welcher Seite er liegt.</translation>
        </message>
        <message>
            <source>The last film does not fit the others.</source>
            <translation>Der letzte Film passt nicht zu den anderen.</translation>
        </message>
        <message>
            <source>Its films and those of the base coat do not compare.</source>
            <translation>Seine Filme und die der Grundfarbe lassen sich nicht vergleichen.</translation>
        </message>
        <message>
            <source>Its last film is old; paint thickens as it stands.</source>
            <translation>Der letzte Film ist alt; Farbe wird im Stehen dicker.</translation>
        </message>
        <message>
            <source>The base coat was filmed more than two hours ago.</source>
            <translation>Die Grundfarbe wurde vor mehr als zwei Stunden gefilmt.</translation>
        </message>
        <message>
            <source>The room has become warmer or colder since the last film.</source>
            <translation>Der Raum ist seit dem letzten Film wärmer oder kälter geworden.</translation>
        </message>
        <message>
            <source>It is thicker than it should be.</source>
            <translation>Dicker, als er sein soll.</translation>
        </message>
        <message>
            <source>It is thinner than it should be.</source>
            <translation>Dünner, als er sein soll.</translation>
        </message>
        <message>
            <source>film again</source>
            <translation>neu filmen</translation>
        </message>
        <message>
            <source>not compared yet</source>
            <translation>noch offen</translation>
        </message>
        <message>
            <source>match</source>
            <translation>passt</translation>
        </message>
        <message>
            <source>thicker</source>
            <translation>dicker</translation>
        </message>
        <message>
            <source>thinner</source>
            <translation>dünner</translation>
        </message>
        <message>
            <source>not sure yet</source>
            <translation>noch nicht sicher</translation>
        </message>
        <message numerus="yes">
            <source>%1: %n film(s)</source>
            <translation>
                <numerusform>%1: %n Film</numerusform>
                <numerusform>%1: %n Filme</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>, %n more</source>
            <translation>
                <numerusform>, noch %n</numerusform>
                <numerusform>, noch %n</numerusform>
            </translation>
        </message>
        <message>
            <source>stream broke after %1</source>
            <translation>Strahl riss nach %1 ab</translation>
        </message>
        <message>
            <source>stream measured</source>
            <translation>Strahl gemessen</translation>
        </message>
        <message>
            <source>ribbon levelled, measured</source>
            <translation>Band verlaufen, gemessen</translation>
        </message>
        <message>
            <source>puddle spread, measured</source>
            <translation>Pfütze ausgebreitet, gemessen</translation>
        </message>
        <message>
            <source>Put the base coat on the bench.</source>
            <translation>Die Grundfarbe auf den Tisch stellen.</translation>
        </message>
        <message>
            <source>The base coat is missing.</source>
            <translation>Die Grundfarbe fehlt.</translation>
        </message>
        <message>
            <source>All match: pour.</source>
            <translation>Alle passen: gießen.</translation>
        </message>
        <message>
            <source>Base coat first: %1</source>
            <translation>Erst die Grundfarbe: %1</translation>
        </message>
        <message>
            <source>%1 holds it back.</source>
            <translation>%1 hält es auf.</translation>
        </message>
        <message>
            <source>Add the first colour.</source>
            <translation>Die erste Farbe dazustellen.</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n cup(s) match</source>
            <translation>
                <numerusform>%1 von %n Becher passt</numerusform>
                <numerusform>%1 von %n Bechern passen</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>engine</name>
        <message>
            <source>A cup can be checked again after 1 to 1440 minutes, not sooner or later.</source>
            <translation>Neu geprüft wird nach 1 bis 1440 Minuten.</translation>
        </message>
        <message>
            <source>A cup needs a name; say what you call it.</source>
            <translation>Ein Becher braucht einen Namen.</translation>
        </message>
        <message>
            <source>A stick was lifted but no stream could be seen under it; use a background that differs from the paint, or more light.</source>
            <translation>Ein Stab wurde gehoben, aber kein Strahl war zu sehen; einen Hintergrund nehmen, der sich von der Farbe abhebt, oder mehr Licht.</translation>
        </message>
        <message>
            <source>A unit needs a name, and one of it must hold 0.001 to 100 mL.</source>
            <translation>Ein Maß braucht einen Namen und fasst 0,001 bis 100 ml.</translation>
        </message>
        <message>
            <source>An addition must lie between 0.001 and 20000 mL.</source>
            <translation>Eine Zugabe liegt zwischen 0,001 und 20000 ml.</translation>
        </message>
        <message>
            <source>Another program has changed this bench meanwhile; look at it and try again.</source>
            <translation>Ein anderes Programm hat diesen Tisch inzwischen geändert; ansehen und noch einmal.</translation>
        </message>
        <message>
            <source>Between 1 and 20 films of a cup can be asked for.</source>
            <translation>Zwischen 1 und 20 Filme eines Bechers lassen sich verlangen.</translation>
        </message>
        <message>
            <source>Camera or tile was moved while the puddle spread; leave both alone.</source>
            <translation>Kamera oder Fliese wurde beim Ausbreiten bewegt; beide stehen lassen.</translation>
        </message>
        <message>
            <source>Clips can be compared only if the camera stays where it is.</source>
            <translation>Clips lassen sich nur vergleichen, wenn die Kamera stehen bleibt.</translation>
        </message>
        <message>
            <source>Loosen the thick paint with some of the cup first, then stir it back in.</source>
            <translation>Die dicke Farbe erst mit etwas aus dem Becher auflockern, dann einrühren.</translation>
        </message>
        <message>
            <source>More than one ribbon was laid, or something stirred or crossed the paint after it: film one ribbon per clip and leave it alone.</source>
            <translation>Mehr als ein Band wurde gelegt, oder danach hat etwas die Farbe gerührt oder gekreuzt: ein Band je Clip filmen und es in Ruhe lassen.</translation>
        </message>
        <message>
            <source>No ribbon of paint was seen to fade: lay one on the paint's own surface, with a lamp or window mirrored in it, and film until it is gone.</source>
            <translation>Kein Farbband verlief: eines auf die Farbe selbst legen, mit gespiegelter Lampe oder Fenster, und filmen, bis es weg ist.</translation>
        </message>
        <message>
            <source>No round puddle was found. Film the tile from straight above, put the measured paint down in one place, take the syringe away and let it spread for ten seconds.</source>
            <translation>Keine runde Pfütze gefunden. Die Fliese von genau oben filmen, die abgemessene Farbe an einer Stelle aufsetzen, Spritze weg, zehn Sekunden ausbreiten lassen.</translation>
        </message>
        <message>
            <source>No session is open; begin one or choose one first.</source>
            <translation>Keine Sitzung ist offen; eine beginnen oder wählen.</translation>
        </message>
        <message>
            <source>No stick was seen to be lifted out of the paint and held still; start filming with the stick standing in the cup, lift it straight up and hold it.</source>
            <translation>Kein Stab wurde aus der Farbe gehoben und ruhig gehalten; mit dem Stab im Becher anfangen, gerade hochziehen, halten.</translation>
        </message>
        <message>
            <source>Nothing happens in this clip: no paint is put on the tile. Start filming, put down the paint, and let it spread for ten seconds.</source>
            <translation>In diesem Clip geschieht nichts: es kommt keine Farbe auf die Fliese. Filmen, Farbe aufsetzen, zehn Sekunden ausbreiten lassen.</translation>
        </message>
        <message>
            <source>Nothing moves in this clip: film the ribbon being laid on the paint and keep filming until it is gone.</source>
            <translation>In diesem Clip bewegt sich nichts: filmen, wie das Band gelegt wird, und weiter, bis es weg ist.</translation>
        </message>
        <message>
            <source>Nothing moves in this clip; film the stick being lifted out of the paint.</source>
            <translation>In diesem Clip bewegt sich nichts; filmen, wie der Stab aus der Farbe gehoben wird.</translation>
        </message>
        <message>
            <source>One more film before adding lets the next addition go further.</source>
            <translation>Ein Film mehr vor dem Zugeben erlaubt eine größere Zugabe.</translation>
        </message>
        <message>
            <source>One reading of each only: how evenly the hand repeats was taken from what is usual. Test the base coat and the cup again for a narrower answer.</source>
            <translation>Nur je eine Messung: wie gleichmäßig die Hand ist, wurde vom Üblichen genommen. Grundfarbe und Becher noch einmal proben, dann wird es enger.</translation>
        </message>
        <message>
            <source>Paint is put down twice in this clip: cut it so that it holds one puddle.</source>
            <translation>In diesem Clip wird zweimal Farbe aufgesetzt: so schneiden, dass er eine Pfütze enthält.</translation>
        </message>
        <message>
            <source>Part of the ribbon stays for good: this paint is too stiff to level, loosen it first.</source>
            <translation>Ein Teil des Bandes bleibt stehen: diese Farbe ist zu steif zum Verlaufen, erst auflockern.</translation>
        </message>
        <message>
            <source>Parts of the surface level at very different speeds: look for a hand's shadow, a crooked ribbon or a skin.</source>
            <translation>Teile der Oberfläche verlaufen sehr verschieden schnell: auf Handschatten, schiefes Band oder Haut achten.</translation>
        </message>
        <message>
            <source>Something fell or moved on the paint after a pause; the levelling is counted from the last of it.</source>
            <translation>Nach einer Pause fiel oder bewegte sich etwas auf der Farbe; gezählt wird ab dem Letzten davon.</translation>
        </message>
        <message>
            <source>The base coat is what the others are compared with; it has no target of its own.</source>
            <translation>Mit der Grundfarbe wird verglichen; sie hat kein eigenes Ziel.</translation>
        </message>
        <message>
            <source>The camera does not look straight down; the mean radius is taken.</source>
            <translation>Die Kamera schaut nicht genau nach unten; der mittlere Radius gilt.</translation>
        </message>
        <message>
            <source>The camera does not look straight down; the radius is taken along the ruler.</source>
            <translation>Die Kamera schaut nicht genau nach unten; der Radius entlang des Lineals gilt.</translation>
        </message>
        <message>
            <source>The camera or the cup was moved while the ribbon levelled: fix the camera, leave the cup alone and film it again.</source>
            <translation>Kamera oder Becher wurde beim Verlaufen bewegt: Kamera befestigen, Becher stehen lassen, wieder filmen.</translation>
        </message>
        <message>
            <source>The camera sends no pictures; check its cable.</source>
            <translation>Die Kamera schickt keine Bilder; Kabel prüfen.</translation>
        </message>
        <message>
            <source>The camera shows a still picture; unplug it and plug it in again.</source>
            <translation>Die Kamera zeigt ein stehendes Bild; abziehen und wieder anstecken.</translation>
        </message>
        <message>
            <source>The camera's clock jumped; film the test again.</source>
            <translation>Die Uhr der Kamera sprang; die Probe wieder filmen.</translation>
        </message>
        <message>
            <source>The camera, the light or something in front of it moved just when the stream seemed to break; keep all of it still and film again.</source>
            <translation>Kamera, Licht oder etwas davor bewegte sich gerade, als der Strahl abzureißen schien; alles ruhig halten, wieder filmen.</translation>
        </message>
        <message>
            <source>The clip ends before enough of the ribbon is gone: film on until the surface is smooth again.</source>
            <translation>Der Clip endet, bevor genug vom Band weg ist: weiterfilmen, bis die Fläche wieder glatt ist.</translation>
        </message>
        <message>
            <source>The clip ends right after the laying: keep filming until the surface is smooth again.</source>
            <translation>Der Clip endet gleich nach dem Legen: weiterfilmen, bis die Fläche wieder glatt ist.</translation>
        </message>
        <message>
            <source>The clip ends too soon to see how the puddle slows down. Film on for ten seconds after the syringe is away.</source>
            <translation>Der Clip endet zu früh, um zu sehen, wie die Pfütze langsamer wird. Nach der Spritze zehn Sekunden weiterfilmen.</translation>
        </message>
        <message>
            <source>The clip ends too soon: paint is still being put down, or has only just been. Film on for ten seconds after the syringe is away.</source>
            <translation>Der Clip endet zu früh: die Farbe wird noch oder wurde eben erst aufgesetzt. Nach der Spritze zehn Sekunden weiterfilmen.</translation>
        </message>
        <message>
            <source>The clip ends while something still moves: keep filming after the ribbon is laid until the surface is smooth again.</source>
            <translation>Der Clip endet, während sich noch etwas bewegt: nach dem Legen weiterfilmen, bis die Fläche glatt ist.</translation>
        </message>
        <message>
            <source>The clip holds no picture.</source>
            <translation>Der Clip enthält kein Bild.</translation>
        </message>
        <message>
            <source>The clip is too short to hold a stream test; film from before the lift until the drips.</source>
            <translation>Der Clip ist zu kurz; von vor dem Heben bis zu den Tropfen filmen.</translation>
        </message>
        <message>
            <source>The clip is too short: film from before the ribbon is laid until the surface is smooth again.</source>
            <translation>Der Clip ist zu kurz: von vor dem Legen filmen, bis die Fläche wieder glatt ist.</translation>
        </message>
        <message>
            <source>The cup is too thin and the reserve is no help: stir in thicker paint or medium of the same kind, a little at a time, and test again; water cannot help.</source>
            <translation>Der Becher ist zu dünn und die Reserve hilft nicht: dickere Farbe oder Medium derselben Art einrühren, immer nur wenig, wieder proben; Wasser hilft nicht.</translation>
        </message>
        <message>
            <source>The film cannot be written; check the room on the disk.</source>
            <translation>Der Film lässt sich nicht schreiben; Platz auf der Platte prüfen.</translation>
        </message>
        <message>
            <source>The first touch of the paint on the tile was not seen.</source>
            <translation>Die erste Berührung der Farbe mit der Fliese war nicht zu sehen.</translation>
        </message>
        <message>
            <source>The last test does not fit the others; stir, and film it again.</source>
            <translation>Die letzte Probe passt nicht zu den anderen; rühren und wieder filmen.</translation>
        </message>
        <message>
            <source>The laying of the ribbon is not in the clip: start filming before it and keep on until the surface is smooth again.</source>
            <translation>Das Legen des Bandes fehlt im Clip: vorher anfangen und filmen, bis die Fläche wieder glatt ist.</translation>
        </message>
        <message>
            <source>The match band must lie between 0.02 and 1.</source>
            <translation>Das Trefferband liegt zwischen 0,02 und 1.</translation>
        </message>
        <message>
            <source>The measurement was stopped; start it again.</source>
            <translation>Die Messung wurde angehalten; neu beginnen.</translation>
        </message>
        <message>
            <source>The moment must lie within the film; give seconds of real time since its first frame.</source>
            <translation>Der Augenblick muss im Film liegen.</translation>
        </message>
        <message>
            <source>The moment that was set by hand lies outside the film; choose one within it.</source>
            <translation>Der von Hand gesetzte Augenblick liegt außerhalb des Films; einen darin wählen.</translation>
        </message>
        <message>
            <source>The moment the stick leaves the paint could not be seen; start filming with the stick standing in the paint and lift it straight up.</source>
            <translation>Der Augenblick, in dem der Stab die Farbe verlässt, war nicht zu sehen; mit dem Stab in der Farbe anfangen und gerade hochziehen.</translation>
        </message>
        <message>
            <source>The paint fills the picture, so shaking and lamp flicker could not be taken out: leave a rim around it.</source>
            <translation>Die Farbe füllt das Bild, darum ließen sich Wackeln und Flackern nicht herausrechnen: einen Rand lassen.</translation>
        </message>
        <message>
            <source>The paint is already on the tile when the clip begins: start filming first, then put the paint down.</source>
            <translation>Die Farbe ist schon auf der Fliese, wenn der Clip beginnt: erst filmen, dann aufsetzen.</translation>
        </message>
        <message>
            <source>The paint is so thin that its own swing still carries it: the viscosity is a lower bound.</source>
            <translation>Die Farbe ist so dünn, dass ihr Schwung sie noch trägt: die Viskosität ist eine untere Grenze.</translation>
        </message>
        <message>
            <source>The paint was moved for far longer than its surface takes to settle: lay one short ribbon, without stirring, or use the puddle test for paint this thin.</source>
            <translation>Die Farbe wurde viel länger bewegt, als ihre Fläche zum Glätten braucht: ein kurzes Band ohne Rühren legen, oder für so dünne Farbe die Pfütze nehmen.</translation>
        </message>
        <message>
            <source>The picture is black: turn on a lamp, take off the lens cap and film again.</source>
            <translation>Das Bild ist schwarz: Lampe an, Deckel ab, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture is black; take the cap off the lens or add light.</source>
            <translation>Das Bild ist schwarz; Deckel ab oder mehr Licht.</translation>
        </message>
        <message>
            <source>The picture is blurred or empty: nothing in it has an edge. Focus on the tile and film again.</source>
            <translation>Das Bild ist unscharf oder leer: nichts hat eine Kante. Auf die Fliese scharfstellen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture is blurred: bring the paint's surface into focus, wipe the lens, and film it again.</source>
            <translation>Das Bild ist unscharf: auf die Farbfläche scharfstellen, Linse wischen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture is too blurred or too plain to see a stick; focus on the stick and film again.</source>
            <translation>Das Bild ist zu unscharf oder zu leer für einen Stab; auf den Stab scharfstellen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture is too blurred to see the stream; focus on the stick and film again.</source>
            <translation>Das Bild ist zu unscharf für den Strahl; auf den Stab scharfstellen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture shows nothing (black, white or covered lens): check the light and the camera, then film it again.</source>
            <translation>Das Bild zeigt nichts (schwarz, weiß oder Linse verdeckt): Licht und Kamera prüfen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture stands still: the film is one frozen picture. Film again.</source>
            <translation>Das Bild steht still: der Film ist ein einziges Bild. Wieder filmen.</translation>
        </message>
        <message>
            <source>The puddle comes to a stop: this paint stands on the tile before it can be timed. Use more paint or a cleaner tile, or test this cup with the stream.</source>
            <translation>Die Pfütze bleibt stehen: diese Farbe hält an, bevor sie zu messen ist. Mehr Farbe oder eine sauberere Fliese nehmen, oder den Strahl.</translation>
        </message>
        <message>
            <source>The puddle creeps a little to one side: check that the tile is level.</source>
            <translation>Die Pfütze kriecht etwas zur Seite: prüfen, ob die Fliese waagrecht liegt.</translation>
        </message>
        <message>
            <source>The puddle creeps to one side as it spreads: the tile is not level. Level it in both directions and film again.</source>
            <translation>Die Pfütze kriecht zur Seite: die Fliese liegt nicht waagrecht. In beiden Richtungen ausrichten, wieder filmen.</translation>
        </message>
        <message>
            <source>The puddle does not spread as flowing paint left alone does: keep hands and sticks off it and film again; if it does so every time, this paint sets too soon for the puddle test.</source>
            <translation>Die Pfütze breitet sich nicht aus wie fließende Farbe, die man lässt: Hände und Stäbe weg, wieder filmen; geschieht es jedes Mal, steift diese Farbe für die Pfütze zu früh an.</translation>
        </message>
        <message>
            <source>The puddle does not spread evenly all round; the interval is wider for it.</source>
            <translation>Die Pfütze breitet sich nicht ringsum gleich aus; der Spielraum ist darum weiter.</translation>
        </message>
        <message>
            <source>The puddle ends up thinner than a millimetre, where it may be about to stop; 5 mL gives a surer viscosity.</source>
            <translation>Die Pfütze wird dünner als ein Millimeter und hält vielleicht bald an; 5 ml geben eine sicherere Viskosität.</translation>
        </message>
        <message>
            <source>The puddle is hardly ever seen whole: take hand and syringe out of the picture once the paint is down and film on for ten seconds.</source>
            <translation>Die Pfütze ist fast nie ganz zu sehen: Hand und Spritze aus dem Bild, sobald die Farbe liegt, und zehn Sekunden weiterfilmen.</translation>
        </message>
        <message>
            <source>The puddle is not round: film from straight above on a level, clean tile, with nothing in the paint's way.</source>
            <translation>Die Pfütze ist nicht rund: von genau oben filmen, waagrechte, saubere Fliese, nichts im Weg.</translation>
        </message>
        <message>
            <source>The puddle is so small that surface tension helps to spread it: use 5 mL for a true viscosity.</source>
            <translation>Die Pfütze ist so klein, dass die Oberflächenspannung mitzieht: 5 ml für eine wahre Viskosität.</translation>
        </message>
        <message>
            <source>The puddle shrinks: the film runs backwards, or something draws the paint away. Film again.</source>
            <translation>Die Pfütze schrumpft: der Film läuft rückwärts, oder etwas zieht die Farbe weg. Wieder filmen.</translation>
        </message>
        <message>
            <source>The puddle slows down more than flowing paint should: it may be about to stop, so the ratio is less sure.</source>
            <translation>Die Pfütze wird langsamer, als fließende Farbe sollte: sie hält vielleicht bald an, das Verhältnis ist unsicherer.</translation>
        </message>
        <message>
            <source>The puddle spreads further on one side than on another: clean the tile, keep things out of the paint's way, and film again.</source>
            <translation>Die Pfütze läuft auf einer Seite weiter: Fliese putzen, nichts im Weg lassen, wieder filmen.</translation>
        </message>
        <message>
            <source>The puddle touches the edge of the picture; the rest is measured.</source>
            <translation>Die Pfütze berührt den Bildrand; der Rest wird gemessen.</translation>
        </message>
        <message>
            <source>The repeats of the same paint lie more than a tenth apart: dip to the same mark, wait the same time after stirring, and test again.</source>
            <translation>Die Wiederholungen derselben Farbe liegen mehr als ein Zehntel auseinander: gleich tief eintauchen, nach dem Rühren gleich lange warten, wieder proben.</translation>
        </message>
        <message>
            <source>The reserve of a cup must lie between 0 and 20000 mL.</source>
            <translation>Die Reserve eines Bechers liegt zwischen 0 und 20000 ml.</translation>
        </message>
        <message>
            <source>The ribbon can hardly be seen: let a lamp or window mirror in the paint, or come closer, and film it again.</source>
            <translation>Das Band ist kaum zu sehen: Lampe oder Fenster in der Farbe spiegeln lassen oder näher heran, wieder filmen.</translation>
        </message>
        <message>
            <source>The ribbon does not fade steadily: keep hands and shadows out of the picture, use more light, and film it again.</source>
            <translation>Das Band verläuft nicht gleichmäßig: Hände und Schatten aus dem Bild, mehr Licht, wieder filmen.</translation>
        </message>
        <message>
            <source>The ribbon is gone within a few pictures: this paint is too thin for the level test at this frame rate, use the puddle test or slow motion.</source>
            <translation>Das Band ist nach wenigen Bildern weg: für diese Bildrate ist die Farbe zu dünn, Pfütze oder Zeitlupe nehmen.</translation>
        </message>
        <message>
            <source>The ribbon's fading is ragged, so the result is rough: more light or a steadier camera helps.</source>
            <translation>Das Band verläuft unruhig, das Ergebnis ist grob: mehr Licht oder eine ruhigere Kamera hilft.</translation>
        </message>
        <message>
            <source>The room temperature must lie between -20 and 60 degrees Celsius.</source>
            <translation>Die Raumtemperatur liegt zwischen -20 und 60 Grad Celsius.</translation>
        </message>
        <message>
            <source>The size of the camera's pictures changed; film the test again.</source>
            <translation>Die Bildgröße der Kamera hat sich geändert; die Probe wieder filmen.</translation>
        </message>
        <message>
            <source>The smallest step must lie between 0.001 and 100 mL.</source>
            <translation>Der kleinste Schritt liegt zwischen 0,001 und 100 ml.</translation>
        </message>
        <message>
            <source>The stick was lifted more than once in this clip; keep one test to a clip.</source>
            <translation>Der Stab wurde in diesem Clip mehrmals gehoben; eine Probe je Clip.</translation>
        </message>
        <message>
            <source>The stream cannot break before the stick is lifted; set the two moments in order.</source>
            <translation>Der Strahl kann nicht abreißen, bevor der Stab gehoben ist; die beiden Augenblicke ordnen.</translation>
        </message>
        <message>
            <source>The stream had not broken by the end of the clip, or it is too faint to tell; film on until it drips, against a background that differs from the paint.</source>
            <translation>Der Strahl war am Ende noch nicht abgerissen oder zu schwach zu sehen; filmen, bis er tropft, vor einem Hintergrund, der sich abhebt.</translation>
        </message>
        <message>
            <source>The surface changes before the ribbon is laid and rests after it: the clip seems to run backwards, or the paint had not come to rest.</source>
            <translation>Die Fläche ändert sich vor dem Legen und ruht danach: der Clip läuft wohl rückwärts, oder die Farbe ruhte noch nicht.</translation>
        </message>
        <message>
            <source>The surface does not come back to its look from before the ribbon: something in the picture or the light changed meanwhile.</source>
            <translation>Die Fläche sieht nicht wieder aus wie vor dem Band: im Bild oder am Licht hat sich etwas geändert.</translation>
        </message>
        <message>
            <source>The surface was disturbed while it levelled (a hand, a second ribbon, a moved cup or camera): lay one ribbon, take everything out of the picture and wait.</source>
            <translation>Die Fläche wurde beim Verlaufen gestört (Hand, zweites Band, Becher oder Kamera bewegt): ein Band legen, alles aus dem Bild nehmen und warten.</translation>
        </message>
        <message>
            <source>The target of a cup must lie between 0.2 and 5.</source>
            <translation>Das Ziel eines Bechers liegt zwischen 0,2 und 5.</translation>
        </message>
        <message>
            <source>The thinner's own ratio must lie between 0.00001 and 100.</source>
            <translation>Das eigene Verhältnis des Verdünners liegt zwischen 0,00001 und 100.</translation>
        </message>
        <message>
            <source>The uncertainty of the volume must lie between 0 and 0.5.</source>
            <translation>Die Unsicherheit der Menge muss zwischen 0 und 0,5 liegen.</translation>
        </message>
        <message>
            <source>The volume of a cup must lie between 1 and 20000 mL.</source>
            <translation>Die Menge eines Bechers liegt zwischen 1 und 20000 ml.</translation>
        </message>
        <message>
            <source>The volume of the puddle must lie between 0.1 and 100 mL.</source>
            <translation>Die Menge der Pfütze muss zwischen 0,1 und 100 ml liegen.</translation>
        </message>
        <message>
            <source>There are two puddles in the picture: film one at a time.</source>
            <translation>Zwei Pfützen sind im Bild: einzeln filmen.</translation>
        </message>
        <message>
            <source>There is no brand to learn for; say whose paint it is.</source>
            <translation>Keine Marke genannt; sagen, wessen Farbe es ist.</translation>
        </message>
        <message>
            <source>There is no place for the brand book; name one with --store.</source>
            <translation>Kein Platz für das Markenbuch gefunden; mit --store einen nennen.</translation>
        </message>
        <message>
            <source>There is no such cup on the bench; look at the list of cups.</source>
            <translation>Diesen Becher gibt es auf dem Tisch nicht.</translation>
        </message>
        <message>
            <source>There is no such session; look at the list of sessions.</source>
            <translation>Diese Sitzung gibt es nicht.</translation>
        </message>
        <message>
            <source>There is no such test on the bench; look at the list of tests.</source>
            <translation>Diese Probe gibt es auf dem Tisch nicht.</translation>
        </message>
        <message>
            <source>There is nothing to redo.</source>
            <translation>Nichts zu wiederholen.</translation>
        </message>
        <message>
            <source>There is nothing to undo.</source>
            <translation>Nichts rückgängig zu machen.</translation>
        </message>
        <message>
            <source>This cup has no ratio to the base coat or no volume, so there is nothing to learn yet.</source>
            <translation>Dieser Becher hat noch kein Verhältnis zur Grundfarbe oder keine Menge; noch nichts zu lernen.</translation>
        </message>
        <message>
            <source>This cup has no test after an addition, so there is nothing to learn yet; add, stir and test it first.</source>
            <translation>Nach einer Zugabe wurde noch nicht geprobt; erst zugeben, rühren und proben.</translation>
        </message>
        <message>
            <source>This test is set aside already.</source>
            <translation>Diese Probe liegt schon beiseite.</translation>
        </message>
        <message>
            <source>This test was not set aside.</source>
            <translation>Diese Probe lag nicht beiseite.</translation>
        </message>
        <message>
            <source>Two streams run off the stick; dip it straighter or use a narrower stick, and film again.</source>
            <translation>Zwei Strahlen laufen vom Stab; gerader eintauchen oder einen schmaleren nehmen, wieder filmen.</translation>
        </message>
        <message>
            <source>Two streams seem to run off the stick; dip it straighter or use a narrower stick.</source>
            <translation>Zwei Strahlen scheinen vom Stab zu laufen; gerader eintauchen oder einen schmaleren nehmen.</translation>
        </message>
        <message>
            <source>What is round in the picture does not spread: either it is no puddle or the paint stopped at once. Use more paint, or test this cup with the stream.</source>
            <translation>Das Runde im Bild breitet sich nicht aus: keine Pfütze, oder die Farbe blieb sofort stehen. Mehr Farbe nehmen oder den Strahl.</translation>
        </message>
        <message>
            <source>The note is empty.</source>
            <translation>Die Notiz ist leer.</translation>
        </message>
        <message>
            <source>There is no scale.</source>
            <translation>Es gibt keinen Maßstab.</translation>
        </message>
        <message>
            <source>A film must be 0 to 100 mm thick.</source>
            <translation>Ein Farbfilm ist 0 bis 100 mm dick.</translation>
        </message>
        <message>
            <source>It is not said what was seen; name the fault.</source>
            <translation>Nicht gesagt, was zu sehen war; den Fehler nennen.</translation>
        </message>
        <message>
            <source>Minutes of rest must not be negative.</source>
            <translation>Ruheminuten können nicht negativ sein.</translation>
        </message>
        <message>
            <source>There is no photo; name its file.</source>
            <translation>Kein Foto; die Datei nennen.</translation>
        </message>
        <message>
            <source>What was planned and used must lie between 0.1 mL and 1000 L.</source>
            <translation>Geplantes und Verbrauchtes liegt zwischen 0,1 ml und 1000 l.</translation>
        </message>
        <message>
            <source>This water is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Dieses Wasser ist kaum dünner als das Ziel und kann den Becher nicht dorthin bringen; etwas Dünneres nehmen.</translation>
        </message>
        <message>
            <source>This additive is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Dieser Zusatz ist kaum dünner als das Ziel und kann den Becher nicht dorthin bringen; Wasser oder einen dünneren nehmen.</translation>
        </message>
        <message>
            <source>This medium is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Dieses Medium ist kaum dünner als das Ziel und kann den Becher nicht dorthin bringen; Wasser oder ein dünneres nehmen.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: outside all commonly quoted advice (50 %); the binder is spread too thin.</source>
            <translation>Zugesetztes Wasser macht %1 % des Bechers aus: außerhalb aller üblichen Ratschläge (50 %); das Bindemittel ist zu dünn verteilt.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: more than commonly quoted advice allows (30 %); go on with medium.</source>
            <translation>Zugesetztes Wasser macht %1 % des Bechers aus: mehr als übliche Ratschläge zulassen (30 %); mit Medium weitermachen.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: above the 20 % that commonly quoted advice calls safe for the film.</source>
            <translation>Zugesetztes Wasser macht %1 % des Bechers aus: über den 20 %, die übliche Ratschläge für den Film sicher nennen.</translation>
        </message>
        <message>
            <source>Additive is %1 % of the cup: see what its label allows.</source>
            <translation>Der Zusatz macht %1 % des Bechers aus: nachsehen, was sein Etikett zulässt.</translation>
        </message>
        <message>
            <source>This cup holds %1 points more added liquid than another cup; they will dry and shrink differently.</source>
            <translation>Dieser Becher enthält %1 Prozentpunkte mehr zugesetzte Flüssigkeit als ein anderer; sie trocknen und schrumpfen verschieden.</translation>
        </message>
        <message>
            <source>This cup holds %1 points less added liquid than another cup; they will dry and shrink differently.</source>
            <translation>Dieser Becher enthält %1 Prozentpunkte weniger zugesetzte Flüssigkeit als ein anderer; sie trocknen und schrumpfen verschieden.</translation>
        </message>
        <message>
            <source>The room is %1 degrees C warmer than when the base coat was tested; test the base coat again.</source>
            <translation>Der Raum ist %1 °C wärmer als beim Test der Grundierung; die Grundierung noch einmal testen.</translation>
        </message>
        <message>
            <source>The room is %1 degrees C colder than when the base coat was tested; test the base coat again.</source>
            <translation>Der Raum ist %1 °C kälter als beim Test der Grundierung; die Grundierung noch einmal testen.</translation>
        </message>
        <message>
            <source>The base coat was tested %1 hours ago; test it again.</source>
            <translation>Die Grundierung wurde vor %1 Stunden getestet; noch einmal testen.</translation>
        </message>
        <message>
            <source>The cup stood open for %1 minutes and has thickened; cover it and test again before adding.</source>
            <translation>Der Becher stand %1 Minuten offen und ist dicker geworden; abdecken und vor der nächsten Zugabe noch einmal testen.</translation>
        </message>
        <message>
            <source>The test came %1 s after stirring; stir, wait 15 s and test, the same for every cup.</source>
            <translation>Der Test kam %1 s nach dem Rühren; rühren, 15 s warten und testen, bei jedem Becher gleich.</translation>
        </message>
        <message>
            <source>The repair takes %1 mL of unthinned paint, more than is kept back; mix more of the same first.</source>
            <translation>Die Rettung braucht %1 mL unverdünnte Farbe, mehr als zurückbehalten ist; erst mehr von derselben mischen.</translation>
        </message>
        <message>
            <source>Another %1 mL of water would pass %2 % of the cup; thin on with medium.</source>
            <translation>Weitere %1 mL Wasser würden %2 % des Bechers überschreiten; mit Medium weiter verdünnen.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; stop here, or film it again to know it better.</source>
            <translation>Ein %1 (%2 mL) ist für diesen Becher auf einmal zu viel; hier aufhören, oder noch einmal filmen, um es genauer zu wissen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; stop here, or film it again to know it better.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; hier aufhören, oder noch einmal filmen, um es genauer zu wissen.</translation>
        </message>
        <message>
            <source>%1 pictures were damaged and partly filled in by the decoder.</source>
            <translation>%1 Bilder waren beschädigt und wurden beim Lesen teilweise ergänzt.</translation>
        </message>
        <message>
            <source>%1 pictures were lost: the file is damaged.</source>
            <translation>%1 Bilder fehlen: die Datei ist beschädigt.</translation>
        </message>
        <message>
            <source>%1 pictures were left out: their times do not rise or jump by minutes.</source>
            <translation>%1 Bilder wurden ausgelassen: ihre Zeiten steigen nicht oder springen um Minuten.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with a teaspoon instead.</source>
            <translation>Ein %1 (%2 mL) ist für diesen Becher auf einmal zu viel; stattdessen mit einem Teelöffel abmessen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with a teaspoon instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit einem Teelöffel abmessen.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with a quarter teaspoon instead.</source>
            <translation>Ein %1 (%2 mL) ist für diesen Becher auf einmal zu viel; stattdessen mit einem Viertelteelöffel abmessen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with a quarter teaspoon instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit einem Viertelteelöffel abmessen.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with 1 mL marks of a pipette instead.</source>
            <translation>Ein %1 (%2 mL) ist für diesen Becher auf einmal zu viel; stattdessen mit den 1-mL-Strichen einer Pipette abmessen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with 1 mL marks of a pipette instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit den 1-mL-Strichen einer Pipette abmessen.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with 0.1 mL marks of a pipette instead.</source>
            <translation>Ein %1 (%2 mL) ist für diesen Becher auf einmal zu viel; stattdessen mit den 0,1-mL-Strichen einer Pipette abmessen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with 0.1 mL marks of a pipette instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit den 0,1-mL-Strichen einer Pipette abmessen.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with drops instead.</source>
            <translation>Ein %1 (%2 mL) ist für diesen Becher auf einmal zu viel; stattdessen mit Tropfen abmessen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with drops instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit Tropfen abmessen.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::BenchBoard</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 bis %3)</translation>
        </message>
        <message>
            <source>%1 water</source>
            <translation>%1 Wasser</translation>
        </message>
        <message>
            <source>stirred just now</source>
            <translation>eben gerührt</translation>
        </message>
        <message numerus="yes">
            <source>stirred %n min ago</source>
            <translation>
                <numerusform>vor %n min gerührt</numerusform>
                <numerusform>vor %n min gerührt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>stirred %n h ago</source>
            <translation>
                <numerusform>vor %n h gerührt</numerusform>
                <numerusform>vor %n h gerührt</numerusform>
            </translation>
        </message>
        <message>
            <source>re-check due</source>
            <translation>neu prüfen</translation>
        </message>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Filmen</translation>
        </message>
        <message>
            <source>To the base coat</source>
            <translation>Zur Grundfarbe</translation>
        </message>
        <message>
            <source>Added</source>
            <translation>Zugegeben</translation>
        </message>
        <message>
            <source>Put back</source>
            <translation>Zurückgegeben</translation>
        </message>
        <message>
            <source>Change the cup</source>
            <translation>Becher ändern</translation>
        </message>
        <message>
            <source>Remember this paint</source>
            <translation>Diese Farbe merken</translation>
        </message>
        <message>
            <source>role</source>
            <translation>Rolle</translation>
        </message>
        <message>
            <source>in the cup now</source>
            <translation>jetzt im Becher</translation>
        </message>
        <message>
            <source>added so far</source>
            <translation>bisher zugegeben</translation>
        </message>
        <message>
            <source>unthinned kept back</source>
            <translation>unverdünnt aufgehoben</translation>
        </message>
        <message>
            <source>wanted</source>
            <translation>gewünscht</translation>
        </message>
        <message>
            <source>should then be</source>
            <translation>sollte dann sein</translation>
        </message>
        <message>
            <source>chance of too thin</source>
            <translation>Gefahr zu dünn</translation>
        </message>
        <message>
            <source>films</source>
            <translation>Filme</translation>
        </message>
        <message>
            <source>Give the cup a name.</source>
            <translation>Dem Becher einen Namen geben.</translation>
        </message>
        <message>
            <source>An amount is a number, such as %1.</source>
            <translation>Eine Menge ist eine Zahl, etwa %1.</translation>
        </message>
        <message>
            <source>What is wanted is a number, 1 for the base coat's own flow.</source>
            <translation>Gewünscht ist eine Zahl, 1 für den Fluss der Grundfarbe.</translation>
        </message>
        <message>
            <source>%1: %2 added.</source>
            <translation>%1: %2 zugegeben.</translation>
        </message>
        <message>
            <source>say later</source>
            <translation>später sagen</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Camera</name>
        <message>
            <source>the camera's own choice</source>
            <translation>wie die Kamera will</translation>
        </message>
        <message>
            <source>%1 × %2, %3 a second</source>
            <translation>%1 × %2, %3 je Sekunde</translation>
        </message>
        <message>
            <source>A camera is there, but this user may not open it; allow access to the camera and come back.</source>
            <translation>Eine Kamera ist da, darf aber nicht geöffnet werden; den Zugriff erlauben und wiederkommen.</translation>
        </message>
        <message>
            <source>No camera found; plug one in, or drop clips from a phone.</source>
            <translation>Keine Kamera gefunden; eine anstecken oder Clips vom Telefon ablegen.</translation>
        </message>
        <message>
            <source>The camera sends no pictures any more; check its cable. Filming goes on as soon as it is back.</source>
            <translation>Die Kamera schickt keine Bilder mehr; Kabel prüfen. Es geht weiter, sobald sie wieder da ist.</translation>
        </message>
        <message>
            <source>Waiting for the camera's first picture …</source>
            <translation>Warten auf das erste Bild der Kamera …</translation>
        </message>
        <message>
            <source>%1 pictures a second, none lost</source>
            <translation>%1 Bilder je Sekunde, keines verloren</translation>
        </message>
        <message numerus="yes">
            <source>%1 pictures a second, %n lost</source>
            <translation>
                <numerusform>%1 Bilder je Sekunde, %n verloren</numerusform>
                <numerusform>%1 Bilder je Sekunde, %n verloren</numerusform>
            </translation>
        </message>
        <message>
            <source> – more light makes it faster</source>
            <translation> – mehr Licht macht sie schneller</translation>
        </message>
    </context>
    <context>
        <name>flowkin::CameraWorker</name>
        <message>
            <source>This camera's pictures cannot be read; choose another size in the settings.</source>
            <translation>Die Bilder dieser Kamera sind nicht lesbar; in den Einstellungen eine andere Größe wählen.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::ClipQueue</name>
        <message>
            <source>waiting</source>
            <translation>wartet</translation>
        </message>
        <message>
            <source>measuring</source>
            <translation>wird gemessen</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>gemessen</translation>
        </message>
        <message>
            <source>measured – whose is it?</source>
            <translation>gemessen – welcher Becher?</translation>
        </message>
        <message>
            <source>no answer</source>
            <translation>keine Antwort</translation>
        </message>
        <message>
            <source>cannot be read</source>
            <translation>nicht lesbar</translation>
        </message>
        <message>
            <source>stopped</source>
            <translation>angehalten</translation>
        </message>
        <message numerus="yes">
            <source>measuring, %n clip(s) to go</source>
            <translation>
                <numerusform>wird gemessen, noch %n Clip</numerusform>
                <numerusform>wird gemessen, noch %n Clips</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::ClipReview</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 (set aside)</source>
            <translation>%1 (beiseite)</translation>
        </message>
        <message>
            <source>%1 (no answer)</source>
            <translation>%1 (keine Antwort)</translation>
        </message>
        <message>
            <source>%1 (by hand)</source>
            <translation>%1 (von Hand)</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>nicht gefunden</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Curves</name>
        <message>
            <source>film %1, %2</source>
            <translation>Film %1, %2</translation>
        </message>
        <message>
            <source>Nothing to plot yet.</source>
            <translation>Noch nichts zu zeichnen.</translation>
        </message>
        <message>
            <source>This test is told by its events, not by a curve; look at the film again to see them.</source>
            <translation>Diese Probe zeigt sich an ihren Ereignissen, nicht an einer Kurve; den Film noch einmal ansehen.</translation>
        </message>
        <message>
            <source>seconds since the start of the test</source>
            <translation>Sekunden seit Beginn der Probe</translation>
        </message>
        <message>
            <source>relief that is left</source>
            <translation>übriges Relief</translation>
        </message>
        <message>
            <source>radius of the puddle, %1</source>
            <translation>Radius der Pfütze, %1</translation>
        </message>
        <message>
            <source>added to the cup, mL</source>
            <translation>dem Becher zugegeben, ml</translation>
        </message>
        <message>
            <source>times as thick as the base coat</source>
            <translation>mal so dick wie die Grundfarbe</translation>
        </message>
        <message>
            <source>mL of water in 100 mL of paint, 0 = flows like the base coat</source>
            <translation>ml Wasser in 100 ml Farbe, 0 = fließt wie die Grundfarbe</translation>
        </message>
        <message>
            <source>No brand has been learned yet: remember a paint once its cup matches.</source>
            <translation>Noch keine Marke gelernt: eine Farbe merken, sobald ihr Becher passt.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Tryout</name>
        <message>
            <source>First try with sample clips</source>
            <translation>Probelauf mit Beispielclips</translation>
        </message>
        <message>
            <source>The sample clips are not installed.</source>
            <translation>Die Beispielclips sind nicht installiert.</translation>
        </message>
        <message>
            <source>One round without paint, two minutes</source>
            <translation>Eine Runde ohne Farbe, zwei Minuten</translation>
        </message>
        <message>
            <source>Three films of the base coat are measured …</source>
            <translation>Drei Filme der Grundfarbe werden gemessen …</translation>
        </message>
        <message>
            <source>The base coat is known.</source>
            <translation>Die Grundfarbe ist bekannt.</translation>
        </message>
        <message>
            <source>A film of the cup Basalt is measured …</source>
            <translation>Ein Film des Bechers Basalt wird gemessen …</translation>
        </message>
        <message>
            <source>The water is written down.</source>
            <translation>Das Wasser ist notiert.</translation>
        </message>
        <message>
            <source>A film of the cup Lagoon is measured …</source>
            <translation>Ein Film des Bechers Lagoon wird gemessen …</translation>
        </message>
        <message>
            <source>A film of the cup Gullfeather is measured …</source>
            <translation>Ein Film des Bechers Gullfeather wird gemessen …</translation>
        </message>
        <message>
            <source>The sample clips show a stick lifted out of paint, the stream running off it and breaking. You will see how a cup is compared with the base coat and what is said about it. Nothing is asked of you but one button.</source>
            <translation>Die Beispielclips zeigen einen Stab, der aus der Farbe gezogen wird, und den Strahl, der davon abläuft und abreißt. So wird ein Becher mit der Grundfarbe verglichen, und das wird dazu gesagt. Zu tun ist nichts als ein Knopf.</translation>
        </message>
        <message>
            <source>Every cup is compared with the base coat. Three films tell how evenly the hand repeats.</source>
            <translation>Jeder Becher wird mit der Grundfarbe verglichen. Drei Filme zeigen, wie gleichmäßig die Hand wiederholt.</translation>
        </message>
        <message>
            <source>On the bench, the long bar shows what the film allows, the bead on it the best guess, the gate in the middle a match. This cup lies on the thick side. The first addition is small on purpose: water cannot be taken out again.</source>
            <translation>Auf dem Tisch zeigt der lange Balken, was der Film zulässt, die Perle darauf die beste Schätzung, das Tor in der Mitte den Treffer. Dieser Becher liegt auf der dicken Seite. Die erste Zugabe ist mit Absicht klein: Wasser lässt sich nicht wieder herausnehmen.</translation>
        </message>
        <message>
            <source>Stirred one minute, the cup would now be filmed again, and so on until it matches. The next cup shows what that looks like near the end.</source>
            <translation>Eine Minute gerührt, würde der Becher jetzt wieder gefilmt, und so weiter, bis er passt. Der nächste Becher zeigt, wie das gegen Ende aussieht.</translation>
        </message>
        <message>
            <source>This cup is close. One film leaves open which side it is on, so no water is added on it; a second or third film decides.</source>
            <translation>Dieser Becher ist nah dran. Ein Film lässt offen, auf welcher Seite er liegt, darum kommt darauf kein Wasser; ein zweiter oder dritter Film entscheidet.</translation>
        </message>
        <message>
            <source>All cups stand on the bench now. The line at the top says whether everything may be poured, and if not, which cup holds it back. Your own bench is untouched; this round keeps to a session of its own.</source>
            <translation>Alle Becher stehen jetzt auf dem Tisch. Die Zeile oben sagt, ob alles gegossen werden darf, und wenn nicht, welcher Becher es aufhält. Der eigene Tisch bleibt unberührt; diese Runde hat eine eigene Sitzung.</translation>
        </message>
        <message>
            <source>Film the base coat</source>
            <translation>Grundfarbe filmen</translation>
        </message>
        <message>
            <source>Film a cup</source>
            <translation>Einen Becher filmen</translation>
        </message>
        <message>
            <source>Added</source>
            <translation>Zugegeben</translation>
        </message>
        <message>
            <source>Film the next cup</source>
            <translation>Den nächsten Becher filmen</translation>
        </message>
        <message>
            <source>One more cup</source>
            <translation>Noch ein Becher</translation>
        </message>
        <message>
            <source>To the bench</source>
            <translation>Zum Tisch</translation>
        </message>
    </context>
</TS>
