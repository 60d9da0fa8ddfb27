<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
    <context>
        <name>BoardScreen</name>
        <message>
            <source>Bench</source>
            <translation>Établi</translation>
        </message>
        <message>
            <source>New cup</source>
            <translation>Nouveau gobelet</translation>
        </message>
        <message>
            <source>Base coat</source>
            <translation>Couche de base</translation>
        </message>
        <message>
            <source>Start with the base coat: everything else is compared with it. Stir it, then film how it runs off a stick.</source>
            <translation>Commencer par la couche de base : tout le reste lui est comparé. La remuer, puis filmer comment elle coule d’un bâtonnet.</translation>
        </message>
        <message>
            <source>Try it first without paint</source>
            <translation>Essayer d’abord sans peinture</translation>
        </message>
        <message>
            <source>Stirred</source>
            <translation>Remué</translation>
        </message>
        <message>
            <source>Next cup</source>
            <translation>Gobelet suivant</translation>
        </message>
        <message>
            <source>Change</source>
            <translation>Modifier</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Annuler</translation>
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
            <translation>Clips d’un gobelet</translation>
        </message>
        <message>
            <source>Clips (*.mp4 *.mov *.m4v *.mkv *.avi *.webm *.3gp)</source>
            <translation>Clips (*.mp4 *.mov *.m4v *.mkv *.avi *.webm *.3gp)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Tous les fichiers (*)</translation>
        </message>
        <message>
            <source>Folder that the phone's clips arrive in</source>
            <translation>Dossier où arrivent les clips du téléphone</translation>
        </message>
        <message>
            <source>Drop clips here</source>
            <translation>Déposer les clips ici</translation>
        </message>
        <message>
            <source>One test per clip, the file as the camera made it.</source>
            <translation>Un essai par clip, le fichier tel que la caméra l’a fait.</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Quel gobelet</translation>
        </message>
        <message>
            <source>Which test</source>
            <translation>Quel essai</translation>
        </message>
        <message>
            <source>stream off the stick</source>
            <translation>filet du bâtonnet</translation>
        </message>
        <message>
            <source>ribbon that levels</source>
            <translation>ruban qui s’étale</translation>
        </message>
        <message>
            <source>puddle that spreads</source>
            <translation>flaque qui s’étend</translation>
        </message>
        <message>
            <source>Choose clips …</source>
            <translation>Choisir des clips …</translation>
        </message>
        <message>
            <source>Stop watching the folder</source>
            <translation>Ne plus surveiller le dossier</translation>
        </message>
        <message>
            <source>Watch a folder …</source>
            <translation>Surveiller un dossier …</translation>
        </message>
        <message>
            <source>Stop all</source>
            <translation>Tout arrêter</translation>
        </message>
        <message>
            <source>Clear the list</source>
            <translation>Vider la liste</translation>
        </message>
        <message>
            <source>Watching %1: new clips appear below.</source>
            <translation>%1 est surveillé : les nouveaux clips apparaissent ci-dessous.</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Arrêter</translation>
        </message>
    </context>
    <context>
        <name>CupCard</name>
        <message>
            <source>thinner</source>
            <translation>plus liquide</translation>
        </message>
        <message>
            <source>thicker</source>
            <translation>plus épais</translation>
        </message>
    </context>
    <context>
        <name>CupForm</name>
        <message>
            <source>Name of the cup</source>
            <translation>Nom du gobelet</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Ce que c’est</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>couche de base</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>couleur</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>activateur</translation>
        </message>
        <message>
            <source>How much is in it (%1)</source>
            <translation>Combien il contient (%1)</translation>
        </message>
        <message>
            <source>How much is in it</source>
            <translation>Combien il contient</translation>
        </message>
        <message>
            <source>Brand</source>
            <translation>Marque</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Teinte</translation>
        </message>
        <message>
            <source>Swatch</source>
            <translation>Échantillon</translation>
        </message>
        <message>
            <source>Swatch %1</source>
            <translation>Échantillon %1</translation>
        </message>
        <message>
            <source>Kept back unthinned (%1)</source>
            <translation>Gardé non dilué (%1)</translation>
        </message>
        <message>
            <source>Kept back unthinned</source>
            <translation>Gardé non dilué</translation>
        </message>
        <message>
            <source>Wanted flow, 1 = base coat</source>
            <translation>Écoulement voulu, 1 = couche de base</translation>
        </message>
        <message>
            <source>Wanted flow</source>
            <translation>Écoulement voulu</translation>
        </message>
        <message>
            <source>Thinned with</source>
            <translation>Dilué avec</translation>
        </message>
        <message>
            <source>water</source>
            <translation>eau</translation>
        </message>
        <message>
            <source>flow additive</source>
            <translation>additif d’écoulement</translation>
        </message>
        <message>
            <source>pouring medium</source>
            <translation>médium de coulage</translation>
        </message>
        <message>
            <source>Put it on the bench</source>
            <translation>Poser sur l’établi</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>Laisser</translation>
        </message>
        <message>
            <source>Take it off the bench</source>
            <translation>Retirer de l’établi</translation>
        </message>
    </context>
    <context>
        <name>CurvesScreen</name>
        <message>
            <source>Curves</source>
            <translation>Courbes</translation>
        </message>
        <message>
            <source>Keep the picture as</source>
            <translation>Garder l’image sous</translation>
        </message>
        <message>
            <source>What to plot</source>
            <translation>Que tracer</translation>
        </message>
        <message>
            <source>the cup's path</source>
            <translation>le chemin du gobelet</translation>
        </message>
        <message>
            <source>one film</source>
            <translation>un film</translation>
        </message>
        <message>
            <source>what a brand does</source>
            <translation>ce que fait une marque</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Quel gobelet</translation>
        </message>
        <message>
            <source>Which film</source>
            <translation>Quel film</translation>
        </message>
        <message>
            <source>Which brand</source>
            <translation>Quelle marque</translation>
        </message>
        <message>
            <source>Closer</source>
            <translation>Plus près</translation>
        </message>
        <message>
            <source>All of it</source>
            <translation>Tout</translation>
        </message>
        <message>
            <source>Keep as picture …</source>
            <translation>Garder en image …</translation>
        </message>
    </context>
    <context>
        <name>FilmScreen</name>
        <message>
            <source>Film</source>
            <translation>Filmer</translation>
        </message>
        <message>
            <source>What the camera sees</source>
            <translation>Ce que voit la caméra</translation>
        </message>
    </context>
    <context>
        <name>Formats</name>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>%1 tsp (%2)</source>
            <translation>%1 c. à c. (%2)</translation>
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
            <translation>mL</translation>
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
            <translation>bâtonnet</translation>
        </message>
        <message>
            <source>paint</source>
            <translation>peinture</translation>
        </message>
        <message>
            <source>paint, with a lamp mirrored in it</source>
            <translation>peinture où se reflète une lampe</translation>
        </message>
        <message>
            <source>puddle</source>
            <translation>flaque</translation>
        </message>
        <message>
            <source>ruler</source>
            <translation>règle</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>flowkin bench</source>
            <translation>flowkin établi</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Établi</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Filmer</translation>
        </message>
        <message>
            <source>Clips</source>
            <translation>Clips</translation>
        </message>
        <message>
            <source>Look again</source>
            <translation>Revoir</translation>
        </message>
        <message>
            <source>Curves</source>
            <translation>Courbes</translation>
        </message>
        <message>
            <source>First try</source>
            <translation>Essai</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Réglages</translation>
        </message>
    </context>
    <context>
        <name>ReviewScreen</name>
        <message>
            <source>Look again</source>
            <translation>Revoir</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Quel gobelet</translation>
        </message>
        <message>
            <source>Which film</source>
            <translation>Quel film</translation>
        </message>
        <message>
            <source>no films yet</source>
            <translation>pas encore de films</translation>
        </message>
        <message>
            <source>Count it again</source>
            <translation>Le compter de nouveau</translation>
        </message>
        <message>
            <source>Set this film aside</source>
            <translation>Écarter ce film</translation>
        </message>
        <message>
            <source>The film, with what was found</source>
            <translation>Le film, avec ce qui a été trouvé</translation>
        </message>
        <message>
            <source>Getting the film …</source>
            <translation>Chargement du film …</translation>
        </message>
        <message>
            <source>Frame of the film</source>
            <translation>Image du film</translation>
        </message>
        <message>
            <source>◂ one frame</source>
            <translation>◂ une image</translation>
        </message>
        <message>
            <source>one frame ▸</source>
            <translation>une image ▸</translation>
        </message>
        <message>
            <source>%1: here</source>
            <translation>%1 : ici</translation>
        </message>
    </context>
    <context>
        <name>SettingsScreen</name>
        <message>
            <source>Settings</source>
            <translation>Réglages</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Langue</translation>
        </message>
        <message>
            <source>as the computer</source>
            <translation>comme l’ordinateur</translation>
        </message>
        <message>
            <source>Amounts</source>
            <translation>Quantités</translation>
        </message>
        <message>
            <source>millilitres, degrees Celsius</source>
            <translation>millilitres, degrés Celsius</translation>
        </message>
        <message>
            <source>US teaspoons and ounces, degrees Fahrenheit</source>
            <translation>cuillères et onces US, degrés Fahrenheit</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <translation>Clair ou sombre</translation>
        </message>
        <message>
            <source>light</source>
            <translation>clair</translation>
        </message>
        <message>
            <source>dark</source>
            <translation>sombre</translation>
        </message>
        <message>
            <source>Size of everything</source>
            <translation>Taille de tout</translation>
        </message>
        <message>
            <source>Camera</source>
            <translation>Caméra</translation>
        </message>
        <message>
            <source>none found</source>
            <translation>aucune trouvée</translation>
        </message>
        <message>
            <source>Picture size</source>
            <translation>Taille d’image</translation>
        </message>
        <message>
            <source>Voice</source>
            <translation>Voix</translation>
        </message>
        <message>
            <source>say results aloud where a voice is installed</source>
            <translation>dire les résultats si une voix est installée</translation>
        </message>
        <message>
            <source>Test on this bench</source>
            <translation>Essai sur cet établi</translation>
        </message>
        <message>
            <source>stream off the stick</source>
            <translation>filet du bâtonnet</translation>
        </message>
        <message>
            <source>ribbon that levels</source>
            <translation>ruban qui s’étale</translation>
        </message>
        <message>
            <source>puddle that spreads</source>
            <translation>flaque qui s’étend</translation>
        </message>
        <message>
            <source>Water is measured in</source>
            <translation>L’eau se mesure en</translation>
        </message>
        <message>
            <source>millilitres, by pipette or syringe</source>
            <translation>millilitres, à la pipette ou seringue</translation>
        </message>
        <message>
            <source>drops of 0.05 mL</source>
            <translation>gouttes de 0,05 mL</translation>
        </message>
        <message>
            <source>pump strokes of 0.13 mL</source>
            <translation>coups de pompe de 0,13 mL</translation>
        </message>
        <message>
            <source>Room (%1)</source>
            <translation>Pièce (%1)</translation>
        </message>
        <message>
            <source>Room temperature</source>
            <translation>Température de la pièce</translation>
        </message>
        <message>
            <source>Session</source>
            <translation>Séance</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>aucune</translation>
        </message>
        <message>
            <source>New session</source>
            <translation>Nouvelle séance</translation>
        </message>
        <message>
            <source>Name of the new session</source>
            <translation>Nom de la nouvelle séance</translation>
        </message>
        <message>
            <source>name</source>
            <translation>nom</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Commencer</translation>
        </message>
    </context>
    <context>
        <name>TryoutScreen</name>
        <message>
            <source>Leave it</source>
            <translation>Laisser</translation>
        </message>
    </context>
    <context>
        <name>Wording</name>
        <message>
            <source>stream</source>
            <translation>filet</translation>
        </message>
        <message>
            <source>ribbon</source>
            <translation>ruban</translation>
        </message>
        <message>
            <source>puddle</source>
            <translation>flaque</translation>
        </message>
        <message>
            <source>stick lifts</source>
            <translation>le bâtonnet se lève</translation>
        </message>
        <message>
            <source>stream breaks</source>
            <translation>le filet se rompt</translation>
        </message>
        <message>
            <source>ribbon is laid</source>
            <translation>le ruban est posé</translation>
        </message>
        <message>
            <source>puddle is poured</source>
            <translation>la flaque est versée</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>couche de base</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>couleur</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>activateur</translation>
        </message>
        <message>
            <source>the stream</source>
            <translation>le filet</translation>
        </message>
        <message>
            <source>the ribbon</source>
            <translation>le ruban</translation>
        </message>
        <message>
            <source>the puddle</source>
            <translation>la flaque</translation>
        </message>
        <message>
            <source>of water</source>
            <translation>d’eau</translation>
        </message>
        <message>
            <source>of flow additive</source>
            <translation>d’additif d’écoulement</translation>
        </message>
        <message>
            <source>of pouring medium</source>
            <translation>de médium de coulage</translation>
        </message>
        <message numerus="yes">
            <source>%n drop(s) %1</source>
            <translation>
                <numerusform>%n goutte %1</numerusform>
                <numerusform>%n gouttes %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n pump stroke(s) %1</source>
            <translation>
                <numerusform>%n coup de pompe %1</numerusform>
                <numerusform>%n coups de pompe %1</numerusform>
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
            <translation>La couche de base est prête.</translation>
        </message>
        <message>
            <source>It matches. Leave it as it is.</source>
            <translation>Accordé. Laisser tel quel.</translation>
        </message>
        <message numerus="yes">
            <source>Film %1 %n time(s).</source>
            <translation>
                <numerusform>Filmer %1 %n fois.</numerusform>
                <numerusform>Filmer %1 %n fois.</numerusform>
            </translation>
        </message>
        <message>
            <source>Film %1 once more.</source>
            <translation>Filmer %1 encore une fois.</translation>
        </message>
        <message>
            <source>Stir one minute, wait 15 seconds, film %1.</source>
            <translation>Remuer une minute, attendre 15 secondes, filmer %1.</translation>
        </message>
        <message>
            <source>Add %1, stir one minute, film again.</source>
            <translation>Ajouter %1, remuer une minute, refilmer.</translation>
        </message>
        <message>
            <source>Put %1 of the unthinned mix back, stir one minute, film again.</source>
            <translation>Remettre %1 du mélange non dilué, remuer une minute, refilmer.</translation>
        </message>
        <message>
            <source>Too thin: stir in thicker paint of this colour, a little at a time, film again.</source>
            <translation>Trop liquide : incorporer un peu de peinture plus épaisse de cette teinte, refilmer.</translation>
        </message>
        <message>
            <source>No more water: thin it further with pouring medium.</source>
            <translation>Plus d’eau : continuer à diluer avec du médium de coulage.</translation>
        </message>
        <message>
            <source>Measure finer: at most %1 at once.</source>
            <translation>Mesurer plus fin : au plus %1 à la fois.</translation>
        </message>
        <message>
            <source>This liquid is hardly thinner than the base coat; use another.</source>
            <translation>Ce liquide est à peine plus fluide que la couche de base ; en prendre un autre.</translation>
        </message>
        <message>
            <source>Say how much is in this cup.</source>
            <translation>Dire combien contient ce gobelet.</translation>
        </message>
        <message>
            <source>Film the base coat first.</source>
            <translation>Filmer d’abord la couche de base.</translation>
        </message>
        <message>
            <source>It has not been filmed yet.</source>
            <translation>Pas encore filmé.</translation>
        </message>
        <message>
            <source>Something was added since the last film.</source>
            <translation>Quelque chose a été ajouté depuis le dernier film.</translation>
        </message>
        <message>
            <source>A few films together tell more than one.</source>
            <translation>Plusieurs films en disent plus qu’un seul.</translation>
        </message>
        <message>
            <source>The films leave open which side it is on.</source>
            <translation>Les films ne disent pas de quel côté il est.</translation>
        </message>
        <message>
            <source>The last film does not fit the others.</source>
            <translation>Le dernier film ne va pas avec les autres.</translation>
        </message>
        <message>
            <source>Its films and those of the base coat do not compare.</source>
            <translation>Ses films et ceux de la couche de base ne se comparent pas.</translation>
        </message>
        <message>
            <source>Its last film is old; paint thickens as it stands.</source>
            <translation>Le dernier film est ancien ; la peinture épaissit au repos.</translation>
        </message>
        <message>
            <source>The base coat was filmed more than two hours ago.</source>
            <translation>La couche de base a été filmée il y a plus de deux heures.</translation>
        </message>
        <message>
            <source>The room has become warmer or colder since the last film.</source>
            <translation>La pièce s’est réchauffée ou refroidie depuis le dernier film.</translation>
        </message>
        <message>
            <source>It is thicker than it should be.</source>
            <translation>Plus épais que voulu.</translation>
        </message>
        <message>
            <source>It is thinner than it should be.</source>
            <translation>Plus liquide que voulu.</translation>
        </message>
        <message>
            <source>film again</source>
            <translation>à refilmer</translation>
        </message>
        <message>
            <source>not compared yet</source>
            <translation>pas encore comparé</translation>
        </message>
        <message>
            <source>match</source>
            <translation>accordé</translation>
        </message>
        <message>
            <source>thicker</source>
            <translation>plus épais</translation>
        </message>
        <message>
            <source>thinner</source>
            <translation>plus liquide</translation>
        </message>
        <message>
            <source>not sure yet</source>
            <translation>pas encore sûr</translation>
        </message>
        <message numerus="yes">
            <source>%1: %n film(s)</source>
            <translation>
                <numerusform>%1 : %n film</numerusform>
                <numerusform>%1 : %n films</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>, %n more</source>
            <translation>
                <numerusform>, encore %n</numerusform>
                <numerusform>, encore %n</numerusform>
            </translation>
        </message>
        <message>
            <source>stream broke after %1</source>
            <translation>le filet s’est rompu après %1</translation>
        </message>
        <message>
            <source>stream measured</source>
            <translation>filet mesuré</translation>
        </message>
        <message>
            <source>ribbon levelled, measured</source>
            <translation>ruban étalé, mesuré</translation>
        </message>
        <message>
            <source>puddle spread, measured</source>
            <translation>flaque étendue, mesurée</translation>
        </message>
        <message>
            <source>Put the base coat on the bench.</source>
            <translation>Poser la couche de base sur l’établi.</translation>
        </message>
        <message>
            <source>The base coat is missing.</source>
            <translation>La couche de base manque.</translation>
        </message>
        <message>
            <source>All match: pour.</source>
            <translation>Tous accordés : couler.</translation>
        </message>
        <message>
            <source>Base coat first: %1</source>
            <translation>D’abord la couche de base : %1</translation>
        </message>
        <message>
            <source>%1 holds it back.</source>
            <translation>%1 retient le reste.</translation>
        </message>
        <message>
            <source>Add the first colour.</source>
            <translation>Ajouter la première couleur.</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n cup(s) match</source>
            <translation>
                <numerusform>%1 sur %n gobelet accordé</numerusform>
                <numerusform>%1 sur %n gobelets accordés</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>engine</name>
        <message>
            <source>A cup can be checked again after 1 to 1440 minutes, not sooner or later.</source>
            <translation>Un gobelet se revérifie après 1 à 1440 minutes.</translation>
        </message>
        <message>
            <source>A cup needs a name; say what you call it.</source>
            <translation>Un gobelet a besoin d’un nom.</translation>
        </message>
        <message>
            <source>A stick was lifted but no stream could be seen under it; use a background that differs from the paint, or more light.</source>
            <translation>Un bâtonnet a été levé, mais aucun filet n’était visible ; prendre un fond différent de la peinture, ou plus de lumière.</translation>
        </message>
        <message>
            <source>A unit needs a name, and one of it must hold 0.001 to 100 mL.</source>
            <translation>Une mesure a besoin d’un nom et contient 0,001 à 100 mL.</translation>
        </message>
        <message>
            <source>An addition must lie between 0.001 and 20000 mL.</source>
            <translation>Un ajout est entre 0,001 et 20000 mL.</translation>
        </message>
        <message>
            <source>Another program has changed this bench meanwhile; look at it and try again.</source>
            <translation>Un autre programme a modifié cet établi ; regarder et réessayer.</translation>
        </message>
        <message>
            <source>Between 1 and 20 films of a cup can be asked for.</source>
            <translation>On peut demander de 1 à 20 films d’un gobelet.</translation>
        </message>
        <message>
            <source>Camera or tile was moved while the puddle spread; leave both alone.</source>
            <translation>La caméra ou le carreau a bougé pendant l’étalement ; ne pas y toucher.</translation>
        </message>
        <message>
            <source>Clips can be compared only if the camera stays where it is.</source>
            <translation>Les clips ne se comparent que si la caméra reste en place.</translation>
        </message>
        <message>
            <source>Loosen the thick paint with some of the cup first, then stir it back in.</source>
            <translation>Assouplir d’abord la peinture épaisse avec un peu du gobelet, puis l’incorporer.</translation>
        </message>
        <message>
            <source>More than one ribbon was laid, or something stirred or crossed the paint after it: film one ribbon per clip and leave it alone.</source>
            <translation>Plus d’un ruban a été posé, ou quelque chose a remué ou traversé la peinture : filmer un ruban par clip et ne plus y toucher.</translation>
        </message>
        <message>
            <source>No ribbon of paint was seen to fade: lay one on the paint's own surface, with a lamp or window mirrored in it, and film until it is gone.</source>
            <translation>Aucun ruban ne s’est effacé : en poser un sur la peinture, avec une lampe ou une fenêtre reflétée, et filmer jusqu’à ce qu’il disparaisse.</translation>
        </message>
        <message>
            <source>No round puddle was found. Film the tile from straight above, put the measured paint down in one place, take the syringe away and let it spread for ten seconds.</source>
            <translation>Aucune flaque ronde trouvée. Filmer le carreau d’en haut, déposer la peinture mesurée en un point, retirer la seringue et laisser s’étendre dix secondes.</translation>
        </message>
        <message>
            <source>No session is open; begin one or choose one first.</source>
            <translation>Aucune séance ouverte ; en commencer ou en choisir une.</translation>
        </message>
        <message>
            <source>No stick was seen to be lifted out of the paint and held still; start filming with the stick standing in the cup, lift it straight up and hold it.</source>
            <translation>Aucun bâtonnet levé et tenu immobile ; commencer bâtonnet dans le gobelet, le lever tout droit et le tenir.</translation>
        </message>
        <message>
            <source>Nothing happens in this clip: no paint is put on the tile. Start filming, put down the paint, and let it spread for ten seconds.</source>
            <translation>Il ne se passe rien : aucune peinture n’est déposée. Filmer, déposer la peinture, laisser s’étendre dix secondes.</translation>
        </message>
        <message>
            <source>Nothing moves in this clip: film the ribbon being laid on the paint and keep filming until it is gone.</source>
            <translation>Rien ne bouge dans ce clip : filmer la pose du ruban et continuer jusqu’à ce qu’il disparaisse.</translation>
        </message>
        <message>
            <source>Nothing moves in this clip; film the stick being lifted out of the paint.</source>
            <translation>Rien ne bouge dans ce clip ; filmer le bâtonnet levé hors de la peinture.</translation>
        </message>
        <message>
            <source>One more film before adding lets the next addition go further.</source>
            <translation>Un film de plus avant d’ajouter permet un ajout plus grand.</translation>
        </message>
        <message>
            <source>One reading of each only: how evenly the hand repeats was taken from what is usual. Test the base coat and the cup again for a narrower answer.</source>
            <translation>Une seule mesure de chaque : la régularité de la main est celle d’usage. Refaire la couche de base et le gobelet pour resserrer.</translation>
        </message>
        <message>
            <source>Paint is put down twice in this clip: cut it so that it holds one puddle.</source>
            <translation>La peinture est déposée deux fois : couper le clip pour n’avoir qu’une flaque.</translation>
        </message>
        <message>
            <source>Part of the ribbon stays for good: this paint is too stiff to level, loosen it first.</source>
            <translation>Une partie du ruban reste : cette peinture est trop ferme pour s’étaler, l’assouplir d’abord.</translation>
        </message>
        <message>
            <source>Parts of the surface level at very different speeds: look for a hand's shadow, a crooked ribbon or a skin.</source>
            <translation>Des parties de la surface s’étalent à des vitesses très différentes : chercher une ombre de main, un ruban de travers ou une peau.</translation>
        </message>
        <message>
            <source>Something fell or moved on the paint after a pause; the levelling is counted from the last of it.</source>
            <translation>Quelque chose est tombé ou a bougé après une pause ; l’étalement est compté à partir de la fin.</translation>
        </message>
        <message>
            <source>The base coat is what the others are compared with; it has no target of its own.</source>
            <translation>La couche de base sert de comparaison ; elle n’a pas de cible.</translation>
        </message>
        <message>
            <source>The camera does not look straight down; the mean radius is taken.</source>
            <translation>La caméra ne regarde pas droit vers le bas ; le rayon moyen est pris.</translation>
        </message>
        <message>
            <source>The camera does not look straight down; the radius is taken along the ruler.</source>
            <translation>La caméra ne regarde pas droit vers le bas ; le rayon le long de la règle est pris.</translation>
        </message>
        <message>
            <source>The camera or the cup was moved while the ribbon levelled: fix the camera, leave the cup alone and film it again.</source>
            <translation>La caméra ou le gobelet a bougé pendant l’étalement : fixer la caméra, laisser le gobelet, refilmer.</translation>
        </message>
        <message>
            <source>The camera sends no pictures; check its cable.</source>
            <translation>La caméra n’envoie pas d’images ; vérifier son câble.</translation>
        </message>
        <message>
            <source>The camera shows a still picture; unplug it and plug it in again.</source>
            <translation>La caméra montre une image figée ; la débrancher et la rebrancher.</translation>
        </message>
        <message>
            <source>The camera's clock jumped; film the test again.</source>
            <translation>L’horloge de la caméra a sauté ; refilmer l’essai.</translation>
        </message>
        <message>
            <source>The camera, the light or something in front of it moved just when the stream seemed to break; keep all of it still and film again.</source>
            <translation>La caméra, la lumière ou un objet a bougé au moment où le filet semblait se rompre ; tout tenir immobile et refilmer.</translation>
        </message>
        <message>
            <source>The clip ends before enough of the ribbon is gone: film on until the surface is smooth again.</source>
            <translation>Le clip finit avant que le ruban ait assez disparu : filmer jusqu’à ce que la surface soit lisse.</translation>
        </message>
        <message>
            <source>The clip ends right after the laying: keep filming until the surface is smooth again.</source>
            <translation>Le clip finit juste après la pose : filmer jusqu’à ce que la surface soit lisse.</translation>
        </message>
        <message>
            <source>The clip ends too soon to see how the puddle slows down. Film on for ten seconds after the syringe is away.</source>
            <translation>Le clip finit trop tôt pour voir la flaque ralentir. Filmer dix secondes après le retrait de la seringue.</translation>
        </message>
        <message>
            <source>The clip ends too soon: paint is still being put down, or has only just been. Film on for ten seconds after the syringe is away.</source>
            <translation>Le clip finit trop tôt : la peinture vient d’être déposée. Filmer dix secondes après le retrait de la seringue.</translation>
        </message>
        <message>
            <source>The clip ends while something still moves: keep filming after the ribbon is laid until the surface is smooth again.</source>
            <translation>Le clip finit alors que quelque chose bouge encore : filmer après la pose jusqu’à ce que la surface soit lisse.</translation>
        </message>
        <message>
            <source>The clip holds no picture.</source>
            <translation>Le clip ne contient aucune image.</translation>
        </message>
        <message>
            <source>The clip is too short to hold a stream test; film from before the lift until the drips.</source>
            <translation>Le clip est trop court ; filmer d’avant le lever jusqu’aux gouttes.</translation>
        </message>
        <message>
            <source>The clip is too short: film from before the ribbon is laid until the surface is smooth again.</source>
            <translation>Le clip est trop court : filmer d’avant la pose jusqu’à ce que la surface soit lisse.</translation>
        </message>
        <message>
            <source>The cup is too thin and the reserve is no help: stir in thicker paint or medium of the same kind, a little at a time, and test again; water cannot help.</source>
            <translation>Le gobelet est trop liquide et la réserve n’y peut rien : incorporer peu à peu peinture ou médium plus épais du même genre, refaire l’essai ; l’eau n’aide pas.</translation>
        </message>
        <message>
            <source>The film cannot be written; check the room on the disk.</source>
            <translation>Le film ne peut être écrit ; vérifier la place sur le disque.</translation>
        </message>
        <message>
            <source>The first touch of the paint on the tile was not seen.</source>
            <translation>Le premier contact de la peinture avec le carreau n’a pas été vu.</translation>
        </message>
        <message>
            <source>The last test does not fit the others; stir, and film it again.</source>
            <translation>Le dernier essai ne va pas avec les autres ; remuer et refilmer.</translation>
        </message>
        <message>
            <source>The laying of the ribbon is not in the clip: start filming before it and keep on until the surface is smooth again.</source>
            <translation>La pose du ruban n’est pas dans le clip : commencer avant et filmer jusqu’à ce que la surface soit lisse.</translation>
        </message>
        <message>
            <source>The match band must lie between 0.02 and 1.</source>
            <translation>La bande d’accord est entre 0,02 et 1.</translation>
        </message>
        <message>
            <source>The measurement was stopped; start it again.</source>
            <translation>La mesure a été arrêtée ; la relancer.</translation>
        </message>
        <message>
            <source>The moment must lie within the film; give seconds of real time since its first frame.</source>
            <translation>L’instant doit être dans le film.</translation>
        </message>
        <message>
            <source>The moment that was set by hand lies outside the film; choose one within it.</source>
            <translation>L’instant choisi à la main est hors du film ; en choisir un dedans.</translation>
        </message>
        <message>
            <source>The moment the stick leaves the paint could not be seen; start filming with the stick standing in the paint and lift it straight up.</source>
            <translation>Le moment où le bâtonnet quitte la peinture n’a pas été vu ; commencer bâtonnet dans la peinture et le lever tout droit.</translation>
        </message>
        <message>
            <source>The paint fills the picture, so shaking and lamp flicker could not be taken out: leave a rim around it.</source>
            <translation>La peinture remplit l’image, donc tremblement et scintillement n’ont pu être retirés : laisser un bord autour.</translation>
        </message>
        <message>
            <source>The paint is already on the tile when the clip begins: start filming first, then put the paint down.</source>
            <translation>La peinture est déjà là au début du clip : filmer d’abord, déposer ensuite.</translation>
        </message>
        <message>
            <source>The paint is so thin that its own swing still carries it: the viscosity is a lower bound.</source>
            <translation>La peinture est si liquide que son élan la porte encore : la viscosité est une borne inférieure.</translation>
        </message>
        <message>
            <source>The paint was moved for far longer than its surface takes to settle: lay one short ribbon, without stirring, or use the puddle test for paint this thin.</source>
            <translation>La peinture a été remuée bien plus longtemps qu’il ne faut à sa surface pour se poser : poser un ruban court sans remuer, ou prendre la flaque pour une peinture si liquide.</translation>
        </message>
        <message>
            <source>The picture is black: turn on a lamp, take off the lens cap and film again.</source>
            <translation>L’image est noire : allumer une lampe, retirer le capuchon, refilmer.</translation>
        </message>
        <message>
            <source>The picture is black; take the cap off the lens or add light.</source>
            <translation>L’image est noire ; retirer le capuchon ou ajouter de la lumière.</translation>
        </message>
        <message>
            <source>The picture is blurred or empty: nothing in it has an edge. Focus on the tile and film again.</source>
            <translation>L’image est floue ou vide. Mettre au point sur le carreau et refilmer.</translation>
        </message>
        <message>
            <source>The picture is blurred: bring the paint's surface into focus, wipe the lens, and film it again.</source>
            <translation>L’image est floue : mettre au point sur la surface, essuyer l’objectif, refilmer.</translation>
        </message>
        <message>
            <source>The picture is too blurred or too plain to see a stick; focus on the stick and film again.</source>
            <translation>L’image est trop floue ou trop vide pour voir un bâtonnet ; mettre au point dessus et refilmer.</translation>
        </message>
        <message>
            <source>The picture is too blurred to see the stream; focus on the stick and film again.</source>
            <translation>L’image est trop floue pour voir le filet ; mettre au point sur le bâtonnet et refilmer.</translation>
        </message>
        <message>
            <source>The picture shows nothing (black, white or covered lens): check the light and the camera, then film it again.</source>
            <translation>L’image ne montre rien (noire, blanche ou objectif couvert) : vérifier lumière et caméra, refilmer.</translation>
        </message>
        <message>
            <source>The picture stands still: the film is one frozen picture. Film again.</source>
            <translation>L’image est figée : le film n’est qu’une image. Refilmer.</translation>
        </message>
        <message>
            <source>The puddle comes to a stop: this paint stands on the tile before it can be timed. Use more paint or a cleaner tile, or test this cup with the stream.</source>
            <translation>La flaque s’arrête avant de pouvoir être mesurée. Plus de peinture, un carreau plus propre, ou le filet.</translation>
        </message>
        <message>
            <source>The puddle creeps a little to one side: check that the tile is level.</source>
            <translation>La flaque glisse un peu d’un côté : vérifier le niveau du carreau.</translation>
        </message>
        <message>
            <source>The puddle creeps to one side as it spreads: the tile is not level. Level it in both directions and film again.</source>
            <translation>La flaque glisse d’un côté : le carreau n’est pas de niveau. Le régler dans les deux sens et refilmer.</translation>
        </message>
        <message>
            <source>The puddle does not spread as flowing paint left alone does: keep hands and sticks off it and film again; if it does so every time, this paint sets too soon for the puddle test.</source>
            <translation>La flaque ne s’étend pas comme une peinture laissée libre : ni mains ni bâtonnets, refilmer ; si cela se répète, cette peinture prend trop tôt pour la flaque.</translation>
        </message>
        <message>
            <source>The puddle does not spread evenly all round; the interval is wider for it.</source>
            <translation>La flaque ne s’étend pas également ; la marge en est plus large.</translation>
        </message>
        <message>
            <source>The puddle ends up thinner than a millimetre, where it may be about to stop; 5 mL gives a surer viscosity.</source>
            <translation>La flaque finit sous un millimètre et va peut-être s’arrêter ; 5 mL donnent une viscosité plus sûre.</translation>
        </message>
        <message>
            <source>The puddle is hardly ever seen whole: take hand and syringe out of the picture once the paint is down and film on for ten seconds.</source>
            <translation>La flaque n’est presque jamais vue entière : sortir main et seringue dès la dépose et filmer dix secondes.</translation>
        </message>
        <message>
            <source>The puddle is not round: film from straight above on a level, clean tile, with nothing in the paint's way.</source>
            <translation>La flaque n’est pas ronde : filmer d’en haut, carreau propre et de niveau, rien sur le chemin.</translation>
        </message>
        <message>
            <source>The puddle is so small that surface tension helps to spread it: use 5 mL for a true viscosity.</source>
            <translation>La flaque est si petite que la tension de surface aide à l’étendre : prendre 5 mL pour une viscosité vraie.</translation>
        </message>
        <message>
            <source>The puddle shrinks: the film runs backwards, or something draws the paint away. Film again.</source>
            <translation>La flaque rétrécit : le film est à l’envers, ou quelque chose aspire la peinture. Refilmer.</translation>
        </message>
        <message>
            <source>The puddle slows down more than flowing paint should: it may be about to stop, so the ratio is less sure.</source>
            <translation>La flaque ralentit plus qu’elle ne devrait : elle va peut-être s’arrêter, le rapport est moins sûr.</translation>
        </message>
        <message>
            <source>The puddle spreads further on one side than on another: clean the tile, keep things out of the paint's way, and film again.</source>
            <translation>La flaque s’étend plus d’un côté : nettoyer le carreau, dégager le chemin, refilmer.</translation>
        </message>
        <message>
            <source>The puddle touches the edge of the picture; the rest is measured.</source>
            <translation>La flaque touche le bord de l’image ; le reste est mesuré.</translation>
        </message>
        <message>
            <source>The repeats of the same paint lie more than a tenth apart: dip to the same mark, wait the same time after stirring, and test again.</source>
            <translation>Les répétitions de la même peinture diffèrent de plus d’un dixième : tremper à la même marque, attendre autant après avoir remué, recommencer.</translation>
        </message>
        <message>
            <source>The reserve of a cup must lie between 0 and 20000 mL.</source>
            <translation>La réserve d’un gobelet est entre 0 et 20000 mL.</translation>
        </message>
        <message>
            <source>The ribbon can hardly be seen: let a lamp or window mirror in the paint, or come closer, and film it again.</source>
            <translation>Le ruban se voit à peine : faire refléter une lampe ou une fenêtre, ou s’approcher, et refilmer.</translation>
        </message>
        <message>
            <source>The ribbon does not fade steadily: keep hands and shadows out of the picture, use more light, and film it again.</source>
            <translation>Le ruban ne s’efface pas régulièrement : ni mains ni ombres dans l’image, plus de lumière, refilmer.</translation>
        </message>
        <message>
            <source>The ribbon is gone within a few pictures: this paint is too thin for the level test at this frame rate, use the puddle test or slow motion.</source>
            <translation>Le ruban disparaît en quelques images : peinture trop liquide à cette cadence, prendre la flaque ou le ralenti.</translation>
        </message>
        <message>
            <source>The ribbon's fading is ragged, so the result is rough: more light or a steadier camera helps.</source>
            <translation>L’effacement est irrégulier, le résultat approximatif : plus de lumière ou une caméra plus stable aide.</translation>
        </message>
        <message>
            <source>The room temperature must lie between -20 and 60 degrees Celsius.</source>
            <translation>La température de la pièce est entre -20 et 60 degrés Celsius.</translation>
        </message>
        <message>
            <source>The size of the camera's pictures changed; film the test again.</source>
            <translation>La taille des images a changé ; refilmer l’essai.</translation>
        </message>
        <message>
            <source>The smallest step must lie between 0.001 and 100 mL.</source>
            <translation>Le plus petit pas est entre 0,001 et 100 mL.</translation>
        </message>
        <message>
            <source>The stick was lifted more than once in this clip; keep one test to a clip.</source>
            <translation>Le bâtonnet a été levé plusieurs fois ; un essai par clip.</translation>
        </message>
        <message>
            <source>The stream cannot break before the stick is lifted; set the two moments in order.</source>
            <translation>Le filet ne peut se rompre avant le lever ; remettre les deux instants dans l’ordre.</translation>
        </message>
        <message>
            <source>The stream had not broken by the end of the clip, or it is too faint to tell; film on until it drips, against a background that differs from the paint.</source>
            <translation>Le filet n’était pas rompu à la fin, ou trop pâle ; filmer jusqu’aux gouttes, sur un fond qui contraste.</translation>
        </message>
        <message>
            <source>The surface changes before the ribbon is laid and rests after it: the clip seems to run backwards, or the paint had not come to rest.</source>
            <translation>La surface change avant la pose et reste calme après : le clip semble à l’envers, ou la peinture n’était pas au repos.</translation>
        </message>
        <message>
            <source>The surface does not come back to its look from before the ribbon: something in the picture or the light changed meanwhile.</source>
            <translation>La surface ne retrouve pas son aspect d’avant le ruban : quelque chose a changé dans l’image ou la lumière.</translation>
        </message>
        <message>
            <source>The surface was disturbed while it levelled (a hand, a second ribbon, a moved cup or camera): lay one ribbon, take everything out of the picture and wait.</source>
            <translation>La surface a été dérangée (main, second ruban, gobelet ou caméra déplacés) : poser un ruban, tout sortir de l’image et attendre.</translation>
        </message>
        <message>
            <source>The target of a cup must lie between 0.2 and 5.</source>
            <translation>La cible d’un gobelet est entre 0,2 et 5.</translation>
        </message>
        <message>
            <source>The thinner's own ratio must lie between 0.00001 and 100.</source>
            <translation>Le rapport du diluant est entre 0,00001 et 100.</translation>
        </message>
        <message>
            <source>The uncertainty of the volume must lie between 0 and 0.5.</source>
            <translation>L’incertitude du volume doit être entre 0 et 0,5.</translation>
        </message>
        <message>
            <source>The volume of a cup must lie between 1 and 20000 mL.</source>
            <translation>Le volume d’un gobelet est entre 1 et 20000 mL.</translation>
        </message>
        <message>
            <source>The volume of the puddle must lie between 0.1 and 100 mL.</source>
            <translation>Le volume de la flaque doit être entre 0,1 et 100 mL.</translation>
        </message>
        <message>
            <source>There are two puddles in the picture: film one at a time.</source>
            <translation>Il y a deux flaques dans l’image : une à la fois.</translation>
        </message>
        <message>
            <source>There is no brand to learn for; say whose paint it is.</source>
            <translation>Aucune marque ; dire de qui est la peinture.</translation>
        </message>
        <message>
            <source>There is no place for the brand book; name one with --store.</source>
            <translation>Pas de place pour le carnet des marques ; en indiquer une avec --store.</translation>
        </message>
        <message>
            <source>There is no such cup on the bench; look at the list of cups.</source>
            <translation>Ce gobelet n’est pas sur l’établi.</translation>
        </message>
        <message>
            <source>There is no such session; look at the list of sessions.</source>
            <translation>Cette séance n’existe pas.</translation>
        </message>
        <message>
            <source>There is no such test on the bench; look at the list of tests.</source>
            <translation>Cet essai n’est pas sur l’établi.</translation>
        </message>
        <message>
            <source>There is nothing to redo.</source>
            <translation>Rien à rétablir.</translation>
        </message>
        <message>
            <source>There is nothing to undo.</source>
            <translation>Rien à annuler.</translation>
        </message>
        <message>
            <source>This cup has no ratio to the base coat or no volume, so there is nothing to learn yet.</source>
            <translation>Ce gobelet n’a pas encore de rapport à la couche de base ou de volume ; rien à apprendre.</translation>
        </message>
        <message>
            <source>This cup has no test after an addition, so there is nothing to learn yet; add, stir and test it first.</source>
            <translation>Aucun essai après un ajout ; ajouter, remuer et essayer d’abord.</translation>
        </message>
        <message>
            <source>This test is set aside already.</source>
            <translation>Cet essai est déjà écarté.</translation>
        </message>
        <message>
            <source>This test was not set aside.</source>
            <translation>Cet essai n’était pas écarté.</translation>
        </message>
        <message>
            <source>Two streams run off the stick; dip it straighter or use a narrower stick, and film again.</source>
            <translation>Deux filets coulent du bâtonnet ; le tremper plus droit ou en prendre un plus étroit, refilmer.</translation>
        </message>
        <message>
            <source>Two streams seem to run off the stick; dip it straighter or use a narrower stick.</source>
            <translation>Deux filets semblent couler du bâtonnet ; le tremper plus droit ou en prendre un plus étroit.</translation>
        </message>
        <message>
            <source>What is round in the picture does not spread: either it is no puddle or the paint stopped at once. Use more paint, or test this cup with the stream.</source>
            <translation>Ce qui est rond ne s’étend pas : ce n’est pas une flaque, ou elle s’est figée aussitôt. Plus de peinture, ou le filet.</translation>
        </message>
        <message>
            <source>The note is empty.</source>
            <translation>La note est vide.</translation>
        </message>
        <message>
            <source>There is no scale.</source>
            <translation>Il n’y a pas d’échelle.</translation>
        </message>
        <message>
            <source>A film must be 0 to 100 mm thick.</source>
            <translation>Un film de peinture a 0 à 100 mm d’épaisseur.</translation>
        </message>
        <message>
            <source>It is not said what was seen; name the fault.</source>
            <translation>Il n’est pas dit ce qui a été vu ; nommer le défaut.</translation>
        </message>
        <message>
            <source>Minutes of rest must not be negative.</source>
            <translation>Les minutes de repos ne peuvent être négatives.</translation>
        </message>
        <message>
            <source>There is no photo; name its file.</source>
            <translation>Pas de photo ; nommer son fichier.</translation>
        </message>
        <message>
            <source>What was planned and used must lie between 0.1 mL and 1000 L.</source>
            <translation>Le prévu et l’utilisé sont entre 0,1 mL et 1000 L.</translation>
        </message>
        <message>
            <source>This water is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Cette eau est à peine plus fluide que le but et ne peut y amener le gobelet ; prenez plus fluide.</translation>
        </message>
        <message>
            <source>This additive is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Cet additif est à peine plus fluide que le but et ne peut y amener le gobelet ; prenez de l’eau ou un plus fluide.</translation>
        </message>
        <message>
            <source>This medium is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Ce médium est à peine plus fluide que le but et ne peut y amener le gobelet ; prenez de l’eau ou un plus fluide.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: outside all commonly quoted advice (50 %); the binder is spread too thin.</source>
            <translation>L’eau ajoutée fait %1 % du gobelet : hors de tous les conseils courants (50 %) ; le liant est trop étalé.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: more than commonly quoted advice allows (30 %); go on with medium.</source>
            <translation>L’eau ajoutée fait %1 % du gobelet : plus que ne le permettent les conseils courants (30 %) ; continuez avec du médium.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: above the 20 % that commonly quoted advice calls safe for the film.</source>
            <translation>L’eau ajoutée fait %1 % du gobelet : au-dessus des 20 % que les conseils courants disent sûrs pour le film.</translation>
        </message>
        <message>
            <source>Additive is %1 % of the cup: see what its label allows.</source>
            <translation>L’additif fait %1 % du gobelet : voyez ce que permet son étiquette.</translation>
        </message>
        <message>
            <source>This cup holds %1 points more added liquid than another cup; they will dry and shrink differently.</source>
            <translation>Ce gobelet contient %1 points de liquide ajouté de plus qu’un autre ; ils sécheront et se rétracteront différemment.</translation>
        </message>
        <message>
            <source>This cup holds %1 points less added liquid than another cup; they will dry and shrink differently.</source>
            <translation>Ce gobelet contient %1 points de liquide ajouté de moins qu’un autre ; ils sécheront et se rétracteront différemment.</translation>
        </message>
        <message>
            <source>The room is %1 degrees C warmer than when the base coat was tested; test the base coat again.</source>
            <translation>La pièce est plus chaude de %1 °C que lors du test du fond ; testez le fond à nouveau.</translation>
        </message>
        <message>
            <source>The room is %1 degrees C colder than when the base coat was tested; test the base coat again.</source>
            <translation>La pièce est plus froide de %1 °C que lors du test du fond ; testez le fond à nouveau.</translation>
        </message>
        <message>
            <source>The base coat was tested %1 hours ago; test it again.</source>
            <translation>Le fond a été testé il y a %1 heures ; testez-le à nouveau.</translation>
        </message>
        <message>
            <source>The cup stood open for %1 minutes and has thickened; cover it and test again before adding.</source>
            <translation>Le gobelet est resté ouvert %1 minutes et s’est épaissi ; couvrez-le et testez à nouveau avant d’ajouter.</translation>
        </message>
        <message>
            <source>The test came %1 s after stirring; stir, wait 15 s and test, the same for every cup.</source>
            <translation>Le test est venu %1 s après avoir remué ; remuez, attendez 15 s et testez, de même pour chaque gobelet.</translation>
        </message>
        <message>
            <source>The repair takes %1 mL of unthinned paint, more than is kept back; mix more of the same first.</source>
            <translation>Le sauvetage demande %1 mL de peinture non diluée, plus que la réserve ; préparez d’abord plus de la même.</translation>
        </message>
        <message>
            <source>Another %1 mL of water would pass %2 % of the cup; thin on with medium.</source>
            <translation>Encore %1 mL d’eau dépasseraient %2 % du gobelet ; continuez à diluer avec du médium.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; stop here, or film it again to know it better.</source>
            <translation>Un %1 (%2 mL) est trop d’un coup pour ce gobelet ; arrêtez-vous là, ou filmez encore pour mieux savoir.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; stop here, or film it again to know it better.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; arrêtez-vous là, ou filmez encore pour mieux savoir.</translation>
        </message>
        <message>
            <source>%1 pictures were damaged and partly filled in by the decoder.</source>
            <translation>%1 images étaient abîmées et ont été complétées en partie à la lecture.</translation>
        </message>
        <message>
            <source>%1 pictures were lost: the file is damaged.</source>
            <translation>%1 images sont perdues : le fichier est abîmé.</translation>
        </message>
        <message>
            <source>%1 pictures were left out: their times do not rise or jump by minutes.</source>
            <translation>%1 images ont été laissées de côté : leurs temps ne montent pas ou sautent de plusieurs minutes.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with a teaspoon instead.</source>
            <translation>Un %1 (%2 mL) est trop d’un coup pour ce gobelet ; mesurez plutôt avec une cuillère à café.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with a teaspoon instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec une cuillère à café.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with a quarter teaspoon instead.</source>
            <translation>Un %1 (%2 mL) est trop d’un coup pour ce gobelet ; mesurez plutôt avec un quart de cuillère à café.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with a quarter teaspoon instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec un quart de cuillère à café.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with 1 mL marks of a pipette instead.</source>
            <translation>Un %1 (%2 mL) est trop d’un coup pour ce gobelet ; mesurez plutôt avec les traits de 1 mL d’une pipette.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with 1 mL marks of a pipette instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec les traits de 1 mL d’une pipette.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with 0.1 mL marks of a pipette instead.</source>
            <translation>Un %1 (%2 mL) est trop d’un coup pour ce gobelet ; mesurez plutôt avec les traits de 0,1 mL d’une pipette.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with 0.1 mL marks of a pipette instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec les traits de 0,1 mL d’une pipette.</translation>
        </message>
        <message>
            <source>One %1 (%2 mL) is too much at once for this cup; measure it out with drops instead.</source>
            <translation>Un %1 (%2 mL) est trop d’un coup pour ce gobelet ; mesurez plutôt avec des gouttes.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with drops instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec des gouttes.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::BenchBoard</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 à %3)</translation>
        </message>
        <message>
            <source>%1 water</source>
            <translation>%1 d’eau</translation>
        </message>
        <message>
            <source>stirred just now</source>
            <translation>remué à l’instant</translation>
        </message>
        <message numerus="yes">
            <source>stirred %n min ago</source>
            <translation>
                <numerusform>remué il y a %n min</numerusform>
                <numerusform>remué il y a %n min</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>stirred %n h ago</source>
            <translation>
                <numerusform>remué il y a %n h</numerusform>
                <numerusform>remué il y a %n h</numerusform>
            </translation>
        </message>
        <message>
            <source>re-check due</source>
            <translation>à revérifier</translation>
        </message>
        <message>
            <source>%1, %2, %3</source>
            <translation>%1, %2, %3</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Filmer</translation>
        </message>
        <message>
            <source>To the base coat</source>
            <translation>À la couche de base</translation>
        </message>
        <message>
            <source>Added</source>
            <translation>Ajouté</translation>
        </message>
        <message>
            <source>Put back</source>
            <translation>Remis</translation>
        </message>
        <message>
            <source>Change the cup</source>
            <translation>Modifier le gobelet</translation>
        </message>
        <message>
            <source>Remember this paint</source>
            <translation>Retenir cette peinture</translation>
        </message>
        <message>
            <source>role</source>
            <translation>rôle</translation>
        </message>
        <message>
            <source>in the cup now</source>
            <translation>dans le gobelet</translation>
        </message>
        <message>
            <source>added so far</source>
            <translation>ajouté jusqu’ici</translation>
        </message>
        <message>
            <source>unthinned kept back</source>
            <translation>gardé non dilué</translation>
        </message>
        <message>
            <source>wanted</source>
            <translation>voulu</translation>
        </message>
        <message>
            <source>should then be</source>
            <translation>devrait alors être</translation>
        </message>
        <message>
            <source>chance of too thin</source>
            <translation>risque de trop liquide</translation>
        </message>
        <message>
            <source>films</source>
            <translation>films</translation>
        </message>
        <message>
            <source>Give the cup a name.</source>
            <translation>Donner un nom au gobelet.</translation>
        </message>
        <message>
            <source>An amount is a number, such as %1.</source>
            <translation>Une quantité est un nombre, par exemple %1.</translation>
        </message>
        <message>
            <source>What is wanted is a number, 1 for the base coat's own flow.</source>
            <translation>La valeur voulue est un nombre, 1 pour l’écoulement de la couche de base.</translation>
        </message>
        <message>
            <source>%1: %2 added.</source>
            <translation>%1 : %2 ajouté.</translation>
        </message>
        <message>
            <source>say later</source>
            <translation>dire plus tard</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Camera</name>
        <message>
            <source>the camera's own choice</source>
            <translation>au choix de la caméra</translation>
        </message>
        <message>
            <source>%1 × %2, %3 a second</source>
            <translation>%1 × %2, %3 par seconde</translation>
        </message>
        <message>
            <source>A camera is there, but this user may not open it; allow access to the camera and come back.</source>
            <translation>Une caméra est là, mais son accès est refusé ; l’autoriser, puis revenir.</translation>
        </message>
        <message>
            <source>No camera found; plug one in, or drop clips from a phone.</source>
            <translation>Aucune caméra ; en brancher une, ou déposer des clips d’un téléphone.</translation>
        </message>
        <message>
            <source>The camera sends no pictures any more; check its cable. Filming goes on as soon as it is back.</source>
            <translation>La caméra n’envoie plus d’images ; vérifier son câble. Le filmage reprend dès qu’elle revient.</translation>
        </message>
        <message>
            <source>Waiting for the camera's first picture …</source>
            <translation>En attente de la première image …</translation>
        </message>
        <message>
            <source>%1 pictures a second, none lost</source>
            <translation>%1 images par seconde, aucune perdue</translation>
        </message>
        <message numerus="yes">
            <source>%1 pictures a second, %n lost</source>
            <translation>
                <numerusform>%1 images par seconde, %n perdue</numerusform>
                <numerusform>%1 images par seconde, %n perdues</numerusform>
            </translation>
        </message>
        <message>
            <source> – more light makes it faster</source>
            <translation> – plus de lumière l’accélère</translation>
        </message>
    </context>
    <context>
        <name>flowkin::CameraWorker</name>
        <message>
            <source>This camera's pictures cannot be read; choose another size in the settings.</source>
            <translation>Les images de cette caméra sont illisibles ; choisir une autre taille dans les réglages.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::ClipQueue</name>
        <message>
            <source>waiting</source>
            <translation>en attente</translation>
        </message>
        <message>
            <source>measuring</source>
            <translation>mesure en cours</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>mesuré</translation>
        </message>
        <message>
            <source>measured – whose is it?</source>
            <translation>mesuré – quel gobelet ?</translation>
        </message>
        <message>
            <source>no answer</source>
            <translation>sans réponse</translation>
        </message>
        <message>
            <source>cannot be read</source>
            <translation>illisible</translation>
        </message>
        <message>
            <source>stopped</source>
            <translation>arrêté</translation>
        </message>
        <message numerus="yes">
            <source>measuring, %n clip(s) to go</source>
            <translation>
                <numerusform>mesure en cours, encore %n clip</numerusform>
                <numerusform>mesure en cours, encore %n clips</numerusform>
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
            <translation>%1 (écarté)</translation>
        </message>
        <message>
            <source>%1 (no answer)</source>
            <translation>%1 (sans réponse)</translation>
        </message>
        <message>
            <source>%1 (by hand)</source>
            <translation>%1 (à la main)</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>non trouvé</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Curves</name>
        <message>
            <source>film %1, %2</source>
            <translation>film %1, %2</translation>
        </message>
        <message>
            <source>Nothing to plot yet.</source>
            <translation>Encore rien à tracer.</translation>
        </message>
        <message>
            <source>This test is told by its events, not by a curve; look at the film again to see them.</source>
            <translation>Cet essai se lit à ses événements, pas à une courbe ; revoir le film.</translation>
        </message>
        <message>
            <source>seconds since the start of the test</source>
            <translation>secondes depuis le début de l’essai</translation>
        </message>
        <message>
            <source>relief that is left</source>
            <translation>relief restant</translation>
        </message>
        <message>
            <source>radius of the puddle, %1</source>
            <translation>rayon de la flaque, %1</translation>
        </message>
        <message>
            <source>added to the cup, mL</source>
            <translation>ajouté au gobelet, mL</translation>
        </message>
        <message>
            <source>times as thick as the base coat</source>
            <translation>fois l’épaisseur de la couche de base</translation>
        </message>
        <message>
            <source>mL of water in 100 mL of paint, 0 = flows like the base coat</source>
            <translation>mL d’eau dans 100 mL de peinture, 0 = coule comme la couche de base</translation>
        </message>
        <message>
            <source>No brand has been learned yet: remember a paint once its cup matches.</source>
            <translation>Aucune marque apprise : retenir une peinture quand son gobelet est accordé.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Tryout</name>
        <message>
            <source>First try with sample clips</source>
            <translation>Essai avec les clips fournis</translation>
        </message>
        <message>
            <source>The sample clips are not installed.</source>
            <translation>Les clips d’exemple ne sont pas installés.</translation>
        </message>
        <message>
            <source>One round without paint, two minutes</source>
            <translation>Un tour sans peinture, deux minutes</translation>
        </message>
        <message>
            <source>Three films of the base coat are measured …</source>
            <translation>Trois films de la couche de base sont mesurés …</translation>
        </message>
        <message>
            <source>The base coat is known.</source>
            <translation>La couche de base est connue.</translation>
        </message>
        <message>
            <source>A film of the cup Basalt is measured …</source>
            <translation>Un film du gobelet Basalt est mesuré …</translation>
        </message>
        <message>
            <source>The water is written down.</source>
            <translation>L’eau est notée.</translation>
        </message>
        <message>
            <source>A film of the cup Lagoon is measured …</source>
            <translation>Un film du gobelet Lagoon est mesuré …</translation>
        </message>
        <message>
            <source>A film of the cup Gullfeather is measured …</source>
            <translation>Un film du gobelet Gullfeather est mesuré …</translation>
        </message>
        <message>
            <source>The sample clips show a stick lifted out of paint, the stream running off it and breaking. You will see how a cup is compared with the base coat and what is said about it. Nothing is asked of you but one button.</source>
            <translation>Les clips d’exemple montrent un bâtonnet levé hors de la peinture et le filet qui en coule et se rompt. On y voit comment un gobelet est comparé à la couche de base et ce qui en est dit. Il n’y a qu’un bouton à presser.</translation>
        </message>
        <message>
            <source>Every cup is compared with the base coat. Three films tell how evenly the hand repeats.</source>
            <translation>Chaque gobelet est comparé à la couche de base. Trois films montrent la régularité de la main.</translation>
        </message>
        <message>
            <source>On the bench, the long bar shows what the film allows, the bead on it the best guess, the gate in the middle a match. This cup lies on the thick side. The first addition is small on purpose: water cannot be taken out again.</source>
            <translation>Sur l’établi, la longue barre montre ce que le film permet, la perle la meilleure estimation, la porte au milieu l’accord. Ce gobelet est du côté épais. Le premier ajout est petit exprès : l’eau ne se retire plus.</translation>
        </message>
        <message>
            <source>Stirred one minute, the cup would now be filmed again, and so on until it matches. The next cup shows what that looks like near the end.</source>
            <translation>Remué une minute, le gobelet serait refilmé, et ainsi de suite jusqu’à l’accord. Le gobelet suivant montre ce que cela donne vers la fin.</translation>
        </message>
        <message>
            <source>This cup is close. One film leaves open which side it is on, so no water is added on it; a second or third film decides.</source>
            <translation>Ce gobelet est proche. Un seul film ne dit pas de quel côté il est, donc pas d’eau pour l’instant ; un deuxième ou troisième film décide.</translation>
        </message>
        <message>
            <source>All cups stand on the bench now. The line at the top says whether everything may be poured, and if not, which cup holds it back. Your own bench is untouched; this round keeps to a session of its own.</source>
            <translation>Tous les gobelets sont sur l’établi. La ligne du haut dit si tout peut être coulé, sinon quel gobelet retient le reste. Votre propre établi n’est pas touché ; ce tour a sa propre séance.</translation>
        </message>
        <message>
            <source>Film the base coat</source>
            <translation>Filmer la couche de base</translation>
        </message>
        <message>
            <source>Film a cup</source>
            <translation>Filmer un gobelet</translation>
        </message>
        <message>
            <source>Added</source>
            <translation>Ajouté</translation>
        </message>
        <message>
            <source>Film the next cup</source>
            <translation>Filmer le gobelet suivant</translation>
        </message>
        <message>
            <source>One more cup</source>
            <translation>Encore un gobelet</translation>
        </message>
        <message>
            <source>To the bench</source>
            <translation>À l’établi</translation>
        </message>
    </context>
</TS>
