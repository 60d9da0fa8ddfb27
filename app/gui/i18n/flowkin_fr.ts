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
        <message>
            <source>Last check</source>
            <translation>Dernier contrôle</translation>
        </message>
    </context>
    <context>
        <name>CellPhoto</name>
        <message>
            <source>All files (%1)</source>
            <translation>Tous les fichiers (%1)</translation>
        </message>
        <message>
            <source>Put it away</source>
            <translation>Ranger</translation>
        </message>
        <message>
            <source>Pointed length (mm)</source>
            <translation>Longueur pointée (mm)</translation>
        </message>
        <message>
            <source>Length between the two ends, millimetres</source>
            <translation>Longueur entre les deux bouts, millimètres</translation>
        </message>
        <message>
            <source>Or a pixel (mm)</source>
            <translation>Ou un pixel (mm)</translation>
        </message>
        <message>
            <source>Size of a pixel, millimetres</source>
            <translation>Taille d’un pixel, millimètres</translation>
        </message>
        <message>
            <source>How many cells there are of each size</source>
            <translation>Combien de cellules de chaque taille</translation>
        </message>
        <message>
            <source>Cells by diameter, up to so many millimetres</source>
            <translation>Cellules par diamètre, jusqu’à tant de millimètres</translation>
        </message>
        <message>
            <source>Only x, y, width, height (px)</source>
            <translation>Seulement x, y, largeur, hauteur (px)</translation>
        </message>
        <message>
            <source>Point at a part</source>
            <translation>Pointer une partie</translation>
        </message>
        <message>
            <source>First picture of cells</source>
            <translation>Première image de cellules</translation>
        </message>
        <message>
            <source>Second picture of cells</source>
            <translation>Deuxième image de cellules</translation>
        </message>
        <message>
            <source>Photos and clips (%1)</source>
            <translation>Photos et clips (%1)</translation>
        </message>
        <message>
            <source>Another one …</source>
            <translation>Une autre …</translation>
        </message>
        <message>
            <source>Choose photo or clip …</source>
            <translation>Choisir photo ou clip …</translation>
        </message>
        <message>
            <source>Part of the picture that counts: x, y, width, height, pixels</source>
            <translation>Partie de l’image qui compte : x, y, largeur, hauteur, pixels</translation>
        </message>
        <message>
            <source>Write it down with this picture</source>
            <translation>Le noter avec cette image</translation>
        </message>
    </context>
    <context>
        <name>CellTable</name>
        <message>
            <source>A photo or short clip of the run-down, from straight above: its cells are counted. A second one lets two activators be compared.</source>
            <translation>Une photo ou un court clip de la coulée, pris à la verticale : ses cellules sont comptées. Une seconde image permet de comparer deux activateurs.</translation>
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
            <source>Folder that the phone&apos;s clips arrive in</source>
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
        <message>
            <source>next</source>
            <comment>the cup to treat next</comment>
            <translation>suivant</translation>
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
        <message>
            <source>Code of the label</source>
            <translation>Code de l’étiquette</translation>
        </message>
        <message>
            <source>scan or paste it, then Enter</source>
            <translation>scanner ou coller, puis Entrée</translation>
        </message>
        <message>
            <source>From a label</source>
            <translation>D’une étiquette</translation>
        </message>
        <message>
            <source>A photo of the label</source>
            <translation>Une photo de l’étiquette</translation>
        </message>
        <message>
            <source>Photos (%1)</source>
            <translation>Photos (%1)</translation>
        </message>
        <message>
            <source>All files (%1)</source>
            <translation>Tous les fichiers (%1)</translation>
        </message>
        <message>
            <source>A photo of the label …</source>
            <translation>Une photo de l’étiquette …</translation>
        </message>
        <message numerus="yes">
            <source>There are %n labels on this photo: %1.</source>
            <translation>
                <numerusform>Il y a %n étiquette sur cette photo : %1.</numerusform>
                <numerusform>Il y a %n étiquettes sur cette photo : %1.</numerusform>
            </translation>
        </message>
        <message>
            <source>Put all of them on the bench</source>
            <translation>Les poser tous sur l’établi</translation>
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
            <source>the cup&apos;s path</source>
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
        <message>
            <source>Farther</source>
            <translation>Plus loin</translation>
        </message>
        <message>
            <source>match</source>
            <translation>accordé</translation>
        </message>
    </context>
    <context>
        <name>DayPage</name>
        <message>
            <source>Causes commonly named, held against that day; none is proven by it.</source>
            <translation>Causes couramment citées, confrontées à ce jour ; aucune n’est prouvée par là.</translation>
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
        <message>
            <source>Which cup</source>
            <translation>Quel gobelet</translation>
        </message>
        <message>
            <source>no cup yet</source>
            <translation>pas encore de gobelet</translation>
        </message>
        <message>
            <source>Which camera</source>
            <translation>Quelle caméra</translation>
        </message>
        <message>
            <source>Size of the picture</source>
            <translation>Taille de l’image</translation>
        </message>
        <message>
            <source>Light and focus held</source>
            <translation>Lumière et netteté tenues</translation>
        </message>
        <message>
            <source>Hold light and focus</source>
            <translation>Tenir lumière et netteté</translation>
        </message>
        <message>
            <source>Throw this film away</source>
            <translation>Jeter ce film</translation>
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
        <message>
            <source>%1 oz</source>
            <translation>%1 oz</translation>
        </message>
        <message>
            <source>%1 g</source>
            <translation>%1 g</translation>
        </message>
        <message>
            <source>in</source>
            <translation>po</translation>
        </message>
        <message>
            <source>cm</source>
            <translation>cm</translation>
        </message>
        <message>
            <source>%1 in</source>
            <translation>%1 po</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 in²</source>
            <translation>%1 po²</translation>
        </message>
        <message>
            <source>%1 cm²</source>
            <translation>%1 cm²</translation>
        </message>
        <message>
            <source>fl oz/ft²</source>
            <translation>fl oz/ft²</translation>
        </message>
        <message>
            <source>mL/m²</source>
            <translation>mL/m²</translation>
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
        <name>JournalScreen</name>
        <message>
            <source>Journal</source>
            <translation>Journal</translation>
        </message>
        <message>
            <source>A photo of it</source>
            <translation>Une photo</translation>
        </message>
        <message>
            <source>Find a day by its words</source>
            <translation>Trouver un jour par ses mots</translation>
        </message>
        <message>
            <source>Nothing found.</source>
            <translation>Rien trouvé.</translation>
        </message>
        <message>
            <source>No day yet. The first cup on the bench begins one.</source>
            <translation>Encore aucun jour. Le premier gobelet sur l’établi en commence un.</translation>
        </message>
        <message>
            <source>Take away</source>
            <translation>Retirer</translation>
        </message>
        <message>
            <source>Lay beside</source>
            <translation>Mettre à côté</translation>
        </message>
        <message>
            <source>Write to this day</source>
            <translation>Écrire à ce jour</translation>
        </message>
        <message>
            <source>Poured</source>
            <translation>Coulé</translation>
        </message>
        <message>
            <source>Photo</source>
            <translation>Photo</translation>
        </message>
        <message>
            <source>Fault</source>
            <translation>Défaut</translation>
        </message>
        <message>
            <source>How it turned out</source>
            <translation>Le résultat</translation>
        </message>
        <message>
            <source>Cell test</source>
            <translation>Test de cellules</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Note</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Annuler</translation>
        </message>
        <message>
            <source>Used (%1)</source>
            <translation>Utilisé (%1)</translation>
        </message>
        <message>
            <source>How much was used</source>
            <translation>Combien a été utilisé</translation>
        </message>
        <message>
            <source>Humidity (%)</source>
            <translation>Humidité (%)</translation>
        </message>
        <message>
            <source>Humidity of the room, per cent</source>
            <translation>Humidité de la pièce, pour cent</translation>
        </message>
        <message>
            <source>Mixes rested (min)</source>
            <translation>Repos des mélanges (min)</translation>
        </message>
        <message>
            <source>How long the mixes rested, minutes</source>
            <translation>Repos des mélanges, minutes</translation>
        </message>
        <message>
            <source>Strained</source>
            <translation>Filtré</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>non précisé</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>oui</translation>
        </message>
        <message>
            <source>no</source>
            <translation>non</translation>
        </message>
        <message>
            <source>Anything else</source>
            <translation>Autre chose</translation>
        </message>
        <message>
            <source>Write down the pour</source>
            <translation>Noter la coulée</translation>
        </message>
        <message>
            <source>When it was taken</source>
            <translation>Quand elle a été prise</translation>
        </message>
        <message>
            <source>wet</source>
            <translation>mouillé</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>sec</translation>
        </message>
        <message>
            <source>a month later</source>
            <translation>un mois après</translation>
        </message>
        <message>
            <source>Choose the photo …</source>
            <translation>Choisir la photo …</translation>
        </message>
        <message>
            <source>What is seen</source>
            <translation>Ce qui se voit</translation>
        </message>
        <message>
            <source>Where, how much</source>
            <translation>Où, combien</translation>
        </message>
        <message>
            <source>where, how much</source>
            <translation>où, combien</translation>
        </message>
        <message>
            <source>Write it down</source>
            <translation>Noter</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Pourquoi</translation>
        </message>
        <message>
            <source>why</source>
            <translation>pourquoi</translation>
        </message>
        <message>
            <source>well</source>
            <translation>bien</translation>
        </message>
        <message>
            <source>fair</source>
            <translation>moyen</translation>
        </message>
        <message>
            <source>badly</source>
            <translation>mal</translation>
        </message>
        <message>
            <source>What the drop does</source>
            <translation>Ce que fait la goutte</translation>
        </message>
        <message>
            <source>lacing: it works</source>
            <translation>dentelle : il agit</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>rien</translation>
        </message>
        <message>
            <source>sits as a blob: too thick</source>
            <translation>reste en pâté : trop épais</translation>
        </message>
        <message>
            <source>sinks or foams: too thin</source>
            <translation>coule ou mousse : trop fluide</translation>
        </message>
        <message>
            <source>After (s)</source>
            <translation>Après (s)</translation>
        </message>
        <message>
            <source>Seconds from drop to verdict</source>
            <translation>Secondes de la goutte au verdict</translation>
        </message>
        <message>
            <source>Activator cup</source>
            <translation>Gobelet d’activateur</translation>
        </message>
        <message>
            <source>The note</source>
            <translation>La note</translation>
        </message>
        <message>
            <source>What is due</source>
            <translation>À faire</translation>
        </message>
        <message>
            <source>What your pours teach</source>
            <translation>Ce qu’enseignent vos coulées</translation>
        </message>
        <message>
            <source>Additive to 1 paint</source>
            <translation>Additif pour 1 de peinture</translation>
        </message>
        <message>
            <source>Parts of additive to one part of paint</source>
            <translation>Parts d’additif pour une part de peinture</translation>
        </message>
        <message>
            <source>find: name, colour, fault, any word</source>
            <translation>chercher : nom, couleur, défaut, mot</translation>
        </message>
    </context>
    <context>
        <name>LastLook</name>
        <message>
            <source>Holds back.</source>
            <translation>Retient.</translation>
        </message>
        <message>
            <source>Mind.</source>
            <translation>Attention.</translation>
        </message>
        <message>
            <source>Back to the bench</source>
            <translation>Retour à l’établi</translation>
        </message>
        <message>
            <source>Poured: write it down</source>
            <translation>Coulé : le noter</translation>
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
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Journal</source>
            <translation>Journal</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Imprimer</translation>
        </message>
    </context>
    <context>
        <name>PageSight</name>
        <message>
            <source>Save as %1</source>
            <translation>Enregistrer sous %1</translation>
        </message>
        <message>
            <source>Page before</source>
            <translation>Page précédente</translation>
        </message>
        <message>
            <source>Next page</source>
            <translation>Page suivante</translation>
        </message>
        <message>
            <source>Whole page</source>
            <translation>Page entière</translation>
        </message>
        <message>
            <source>Larger</source>
            <translation>Plus grand</translation>
        </message>
        <message>
            <source>Put it away</source>
            <translation>Ranger</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Page %1 sur %2</translation>
        </message>
        <message>
            <source>The page as it will be printed</source>
            <translation>La page telle qu’elle sera imprimée</translation>
        </message>
        <message>
            <source>Print on paper …</source>
            <translation>Imprimer sur papier …</translation>
        </message>
    </context>
    <context>
        <name>PlanScreen</name>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Keep the plan as</source>
            <translation>Garder le plan sous</translation>
        </message>
        <message>
            <source>Canvas</source>
            <translation>Toile</translation>
        </message>
        <message>
            <source>Shape</source>
            <translation>Forme</translation>
        </message>
        <message>
            <source>rectangle</source>
            <translation>rectangle</translation>
        </message>
        <message>
            <source>round</source>
            <translation>ronde</translation>
        </message>
        <message>
            <source>Diameter (%1)</source>
            <translation>Diamètre (%1)</translation>
        </message>
        <message>
            <source>Length (%1)</source>
            <translation>Longueur (%1)</translation>
        </message>
        <message>
            <source>Length or diameter</source>
            <translation>Longueur ou diamètre</translation>
        </message>
        <message>
            <source>Width (%1)</source>
            <translation>Largeur (%1)</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Largeur</translation>
        </message>
        <message>
            <source>Depth (%1)</source>
            <translation>Profondeur (%1)</translation>
        </message>
        <message>
            <source>Depth</source>
            <translation>Profondeur</translation>
        </message>
        <message>
            <source>How many</source>
            <translation>Combien</translation>
        </message>
        <message>
            <source>How many canvases</source>
            <translation>Combien de toiles</translation>
        </message>
        <message>
            <source>paint the sides too</source>
            <translation>peindre aussi les côtés</translation>
        </message>
        <message>
            <source>Technique</source>
            <translation>Technique</translation>
        </message>
        <message>
            <source>Way of pouring</source>
            <translation>Façon de couler</translation>
        </message>
        <message>
            <source>Base coat (%1)</source>
            <translation>Couche de base (%1)</translation>
        </message>
        <message>
            <source>Base coat on the canvas</source>
            <translation>Couche de base sur la toile</translation>
        </message>
        <message>
            <source>Colours (%1)</source>
            <translation>Couleurs (%1)</translation>
        </message>
        <message>
            <source>Colours on the canvas</source>
            <translation>Couleurs sur la toile</translation>
        </message>
        <message>
            <source>Activator (%1)</source>
            <translation>Activateur (%1)</translation>
        </message>
        <message>
            <source>Activator on the canvas</source>
            <translation>Activateur sur la toile</translation>
        </message>
        <message>
            <source>Keep these amounts</source>
            <translation>Garder ces quantités</translation>
        </message>
        <message>
            <source>Back to the starting amounts</source>
            <translation>Revenir aux quantités de départ</translation>
        </message>
        <message>
            <source>Colours</source>
            <translation>Couleurs</translation>
        </message>
        <message>
            <source>Body of %1</source>
            <translation>Corps de %1</translation>
        </message>
        <message>
            <source>parts</source>
            <translation>parts</translation>
        </message>
        <message>
            <source>Parts of %1</source>
            <translation>Parts de %1</translation>
        </message>
        <message>
            <source>Leave out</source>
            <translation>Écarter</translation>
        </message>
        <message>
            <source>Leave out %1</source>
            <translation>Écarter %1</translation>
        </message>
        <message>
            <source>Name of another colour</source>
            <translation>Nom d’une autre couleur</translation>
        </message>
        <message>
            <source>another colour</source>
            <translation>autre couleur</translation>
        </message>
        <message>
            <source>Add it</source>
            <translation>L’ajouter</translation>
        </message>
        <message>
            <source>Take those of the bench</source>
            <translation>Prendre celles de l’établi</translation>
        </message>
        <message>
            <source>First mixes, before any water</source>
            <translation>Premiers mélanges, avant toute eau</translation>
        </message>
        <message>
            <source>Pouring medium</source>
            <translation>Médium de coulage</translation>
        </message>
        <message>
            <source>Parts of base</source>
            <translation>Parts de base</translation>
        </message>
        <message>
            <source>Parts of varnish</source>
            <translation>Parts de vernis</translation>
        </message>
        <message>
            <source>Measured by</source>
            <translation>Mesuré en</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volume</translation>
        </message>
        <message>
            <source>weight</source>
            <translation>poids</translation>
        </message>
        <message>
            <source>To spare</source>
            <translation>Marge et pertes</translation>
        </message>
        <message>
            <source>Kept back unthinned (%)</source>
            <translation>Gardé non dilué (%)</translation>
        </message>
        <message>
            <source>Kept back unthinned, per cent</source>
            <translation>Gardé non dilué, pour cent</translation>
        </message>
        <message>
            <source>Lost to cups and sticks (%)</source>
            <translation>Perte en gobelets (%)</translation>
        </message>
        <message>
            <source>Lost to cups and sticks, per cent</source>
            <translation>Perte en gobelets et bâtons, pour cent</translation>
        </message>
        <message>
            <source>Water expected (%)</source>
            <translation>Eau attendue (%)</translation>
        </message>
        <message>
            <source>Water expected, per cent</source>
            <translation>Eau attendue, pour cent</translation>
        </message>
        <message>
            <source>Tests of each cup</source>
            <translation>Tests par gobelet</translation>
        </message>
        <message>
            <source>To have ready</source>
            <translation>À préparer</translation>
        </message>
        <message>
            <source>at hand (%1)</source>
            <translation>sous la main (%1)</translation>
        </message>
        <message>
            <source>At hand of %1</source>
            <translation>Sous la main : %1</translation>
        </message>
        <message>
            <source>container (%1)</source>
            <translation>contenant (%1)</translation>
        </message>
        <message>
            <source>Container of %1</source>
            <translation>Contenant de %1</translation>
        </message>
        <message>
            <source>its price</source>
            <translation>son prix</translation>
        </message>
        <message>
            <source>Price of a container of %1</source>
            <translation>Prix d’un contenant de %1</translation>
        </message>
        <message>
            <source>Left over on the shelf</source>
            <translation>Restes sur l’étagère</translation>
        </message>
        <message>
            <source>use what the book knows: left-overs and your earlier pours</source>
            <translation>utiliser ce que sait le carnet : restes et coulées précédentes</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Fini</translation>
        </message>
        <message>
            <source>%1 is gone</source>
            <translation>%1 est fini</translation>
        </message>
        <message>
            <source>What is left over</source>
            <translation>Ce qui reste</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Ce que c’est</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>couleur</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>couche de base</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>activateur</translation>
        </message>
        <message>
            <source>pouring medium</source>
            <translation>médium de coulage</translation>
        </message>
        <message>
            <source>How much (%1)</source>
            <translation>Combien (%1)</translation>
        </message>
        <message>
            <source>How much</source>
            <translation>Combien</translation>
        </message>
        <message>
            <source>thinned with water</source>
            <translation>dilué à l’eau</translation>
        </message>
        <message>
            <source>Put it on the shelf</source>
            <translation>Mettre sur l’étagère</translation>
        </message>
        <message>
            <source>It is not gone</source>
            <translation>Finalement pas fini</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Attention</translation>
        </message>
        <message>
            <source>Keep the plan as a file …</source>
            <translation>Garder le plan en fichier …</translation>
        </message>
        <message>
            <source>Cup, bottom (%1)</source>
            <translation>Gobelet, fond (%1)</translation>
        </message>
        <message>
            <source>Inner diameter of the cup at the bottom</source>
            <translation>Diamètre intérieur du gobelet au fond</translation>
        </message>
        <message>
            <source>Cup, rim (%1)</source>
            <translation>Gobelet, bord (%1)</translation>
        </message>
        <message>
            <source>Inner diameter of the cup at the rim</source>
            <translation>Diamètre intérieur du gobelet au bord</translation>
        </message>
        <message>
            <source>Cup, height (%1)</source>
            <translation>Gobelet, hauteur (%1)</translation>
        </message>
        <message>
            <source>Inner height of the cup</source>
            <translation>Hauteur intérieure du gobelet</translation>
        </message>
        <message>
            <source>Its flow as tested, 1 = base coat</source>
            <translation>Son écoulement testé, 1 = couche de base</translation>
        </message>
        <message>
            <source>Flow of this batch as tested, 1 is the base coat</source>
            <translation>Écoulement testé de ce lot, 1 est la couche de base</translation>
        </message>
        <message>
            <source>Flow of the last batch</source>
            <translation>Écoulement du lot précédent</translation>
        </message>
        <message>
            <source>Flow of the last batch as tested, 1 is the base coat</source>
            <translation>Écoulement testé du lot précédent, 1 est la couche de base</translation>
        </message>
        <message>
            <source>Put these cups on the bench</source>
            <translation>Poser ces gobelets sur l’établi</translation>
        </message>
    </context>
    <context>
        <name>PrintScreen</name>
        <message>
            <source>Print</source>
            <translation>Imprimer</translation>
        </message>
        <message>
            <source>Where the files go</source>
            <translation>Où vont les fichiers</translation>
        </message>
        <message>
            <source>Written: %1</source>
            <translation>Écrit : %1</translation>
        </message>
        <message>
            <source>Open it</source>
            <translation>Ouvrir</translation>
        </message>
        <message>
            <source>Of the day %1</source>
            <translation>Du jour %1</translation>
        </message>
        <message>
            <source>Of a day</source>
            <translation>D’un jour</translation>
        </message>
        <message>
            <source>The journal&apos;s open day; choose another one there.</source>
            <translation>Le jour ouvert du journal ; choisissez-en un autre là-bas.</translation>
        </message>
        <message>
            <source>Labels for the jars</source>
            <translation>Étiquettes des bocaux</translation>
        </message>
        <message>
            <source>Report with photos</source>
            <translation>Rapport avec photos</translation>
        </message>
        <message>
            <source>Of the plan</source>
            <translation>Du plan</translation>
        </message>
        <message>
            <source>Sheet for the bench</source>
            <translation>Feuille d’établi</translation>
        </message>
        <message>
            <source>Places in the class</source>
            <translation>Places du cours</translation>
        </message>
        <message>
            <source>What stands on top</source>
            <translation>Ce qui figure en haut</translation>
        </message>
        <message>
            <source>Handout for the class</source>
            <translation>Document du cours</translation>
        </message>
        <message>
            <source>Of all days</source>
            <translation>De tous les jours</translation>
        </message>
        <message>
            <source>Table (CSV)</source>
            <translation>Tableau (CSV)</translation>
        </message>
        <message>
            <source>Document (JSON)</source>
            <translation>Document (JSON)</translation>
        </message>
        <message>
            <source>Choose another folder …</source>
            <translation>Choisir un autre dossier …</translation>
        </message>
        <message>
            <source>A file of the same name is replaced.</source>
            <translation>Un fichier du même nom est remplacé.</translation>
        </message>
        <message>
            <source>Sent to be printed: %1</source>
            <translation>Envoyé à l’impression : %1</translation>
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
            <source>Stop here, or film it again to know it better.</source>
            <translation>En rester là, ou refilmer pour le savoir mieux.</translation>
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
        <message>
            <source>%1 cells on a cm² (%2 to %3), half larger than %4 mm (%5 to %6)</source>
            <translation>%1 cellules par cm² (%2 à %3), la moitié plus grandes que %4 mm (%5 à %6)</translation>
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 à %3)</translation>
        </message>
        <message>
            <source>was %1</source>
            <comment>its ratio before the last addition</comment>
            <translation>avant : %1</translation>
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
            <source>The camera zoomed, or was moved up or down, while the puddle spread: fix camera and zoom and film again.</source>
            <translation>La caméra a zoomé, ou a été levée ou baissée, pendant que la flaque s&apos;étalait : fixez caméra et zoom et refilmez.</translation>
        </message>
        <message>
            <source>The camera zoomed a little, or was moved up or down, while the puddle spread; this was taken out by what lies round the tile.</source>
            <translation>La caméra a un peu zoomé, ou a été levée ou baissée, pendant que la flaque s&apos;étalait ; cela a été corrigé d&apos;après ce qui entoure le carreau.</translation>
        </message>
        <message>
            <source>The moment the stream breaks, the coat on the stick and the drips tell different ratios of this cup, further apart than chance allows; the range given was widened. A flow additive or heavy pigment in only one of the two cups does that, and so does paint that runs thinner the harder it is pulled: the level test tells how it will settle on the canvas.</source>
            <translation>La rupture du filet, la couche de peinture sur le bâtonnet et les gouttes donnent pour ce gobelet des rapports différents, plus éloignés que le hasard ne le permet ; l’intervalle donné a été élargi. Un additif d’écoulement ou un pigment lourd dans un seul des deux gobelets en est la cause, ou une peinture qui coule d’autant plus fluide qu’elle est tirée fort : le film du ruban dit comment elle s’étalera sur la toile.</translation>
        </message>
        <message>
            <source>The same films tell different ratios of this cup, further apart than chance allows; the range given was widened.</source>
            <translation>Les mêmes films donnent pour ce gobelet des rapports différents, plus éloignés que le hasard ne le permet ; l’intervalle donné a été élargi.</translation>
        </message>
        <message>
            <source>The puddle runs out of the picture: put the paint down in the middle, or film from further away.</source>
            <translation>La flaque sort de l&apos;image : déposez la peinture au milieu, ou filmez de plus loin.</translation>
        </message>
        <message>
            <source>The paint hardly stands out from what lies under it: put it on a plain tile of another colour.</source>
            <translation>La peinture se distingue à peine de ce qui est dessous : déposez-la sur un carreau uni d&apos;une autre couleur.</translation>
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
            <source>No ribbon of paint was seen to fade: lay one on the paint&apos;s own surface, with a lamp or window mirrored in it, and film until it is gone.</source>
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
            <source>Parts of the surface level at very different speeds: look for a hand&apos;s shadow, a crooked ribbon or a skin.</source>
            <translation>Des parties de la surface s’étalent à des vitesses très différentes : chercher une ombre de main, un ruban de travers ou une peau.</translation>
        </message>
        <message>
            <source>Something fell or moved on the paint after a pause; the levelling is counted from the last of it.</source>
            <translation>Quelque chose est tombé ou a bougé après une pause ; l’étalement est compté à partir de la fin.</translation>
        </message>
        <message>
            <source>Something moved over the ribbon, once it was laid, for as long as it takes to level: take stick and hand away at once, or lay it with less in the way.</source>
            <translation>Une fois le ruban posé, quelque chose a bougé au-dessus aussi longtemps qu’il met à s’étaler : retirer bâton et main aussitôt, ou le poser avec moins devant.</translation>
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
            <source>The camera&apos;s clock jumped; film the test again.</source>
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
            <source>The picture is blurred: bring the paint&apos;s surface into focus, wipe the lens, and film it again.</source>
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
            <source>The puddle is not round: film from straight above on a level, clean tile, with nothing in the paint&apos;s way.</source>
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
            <source>The size of the puddle jumps after it had slowed down: paint was added later, or the camera zoomed or was moved up or down. Film one pour from a fixed camera.</source>
            <translation>La taille de la flaque saute après qu’elle avait ralenti : de la peinture a été ajoutée, ou la caméra a zoomé ou a été déplacée vers le haut ou le bas. Filmer une seule coulée, caméra fixe.</translation>
        </message>
        <message>
            <source>The puddle slows down more than flowing paint should: it may be about to stop, so the ratio is less sure.</source>
            <translation>La flaque ralentit plus qu’elle ne devrait : elle va peut-être s’arrêter, le rapport est moins sûr.</translation>
        </message>
        <message>
            <source>The puddle spreads further on one side than on another: clean the tile, keep things out of the paint&apos;s way, and film again.</source>
            <translation>La flaque s’étend plus d’un côté : nettoyer le carreau, dégager le chemin, refilmer.</translation>
        </message>
        <message>
            <source>The puddle touches the edge of the picture; the rest is measured.</source>
            <translation>La flaque touche le bord de l’image ; le reste est mesuré.</translation>
        </message>
        <message>
            <source>The quiet surface before the ribbon is not in the clip, so it cannot be told whether what mirrors in it stood still: start filming a second earlier.</source>
            <translation>La surface au repos d’avant le ruban manque au film, on ne peut donc savoir si les reflets restaient immobiles : commencer à filmer une seconde plus tôt.</translation>
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
            <source>The ribbon fades within a few pictures and too unevenly for them: film at 60 pictures a second or more, or in slow motion.</source>
            <translation>Le ruban s’efface en quelques images, et trop irrégulièrement pour elles : filmer à 60 images par seconde ou plus, ou au ralenti.</translation>
        </message>
        <message>
            <source>The ribbon is gone within a few pictures: this paint is too thin for the level test at this frame rate, use the puddle test or slow motion.</source>
            <translation>Le ruban disparaît en quelques images : peinture trop liquide à cette cadence, prendre la flaque ou le ralenti.</translation>
        </message>
        <message>
            <source>The ribbon&apos;s fading is ragged, so the result is rough: more light or a steadier camera helps.</source>
            <translation>L’effacement est irrégulier, le résultat approximatif : plus de lumière ou une caméra plus stable aide.</translation>
        </message>
        <message>
            <source>The room temperature must lie between -20 and 60 degrees Celsius.</source>
            <translation>La température de la pièce est entre -20 et 60 degrés Celsius.</translation>
        </message>
        <message>
            <source>The size of the camera&apos;s pictures changed; film the test again.</source>
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
            <source>The thinner&apos;s own ratio must lie between 0.00001 and 100.</source>
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
            <source>What mirrors in the paint moved or the light changed while the ribbon levelled: keep lamps, curtains and yourself still and film it again.</source>
            <translation>Pendant que le ruban s’étalait, un reflet dans la peinture a bougé ou la lumière a changé : ne bouger ni lampes, ni rideaux, ni soi-même, et refilmer.</translation>
        </message>
        <message>
            <source>What mirrors in the paint moved while the ribbon levelled, so the result is rough: keep lamps, curtains and yourself still.</source>
            <translation>Pendant que le ruban s’étalait, un reflet dans la peinture a bougé, le résultat est donc grossier : ne bouger ni lampes, ni rideaux, ni soi-même.</translation>
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
            <source>%1 % added water in the wettest cup</source>
            <translation>%1 % d’eau ajoutée dans le gobelet le plus aqueux</translation>
        </message>
        <message>
            <source>%1 % added water; limits of %2 to %3 % are commonly quoted, none is proven for pours</source>
            <translation>%1 % d’eau ajoutée ; on cite couramment des limites de %2 à %3 %, aucune n’est prouvée pour les coulées</translation>
        </message>
        <message>
            <source>%1 % against %2 %; how much is too much nobody has published</source>
            <translation>%1 % contre %2 % ; combien est trop, personne ne l’a publié</translation>
        </message>
        <message>
            <source>%1 % humidity</source>
            <translation>%1 % d’humidité</translation>
        </message>
        <message>
            <source>%1 minutes of rest</source>
            <translation>%1 minutes de repos</translation>
        </message>
        <message>
            <source>%1 minutes since it was stirred</source>
            <translation>%1 minutes depuis qu’il a été remué</translation>
        </message>
        <message>
            <source>%1 minutes since its last test; an open cup dries by a few per cent of its flow an hour</source>
            <translation>%1 minutes depuis son dernier test ; un gobelet ouvert perd quelques pour cent d’écoulement par heure</translation>
        </message>
        <message>
            <source>%1 mm dry</source>
            <translation>%1 mm sec</translation>
        </message>
        <message>
            <source>%1 mm dry; wall paint is asked to bear about %2 mm without cracks</source>
            <translation>%1 mm sec ; on demande à une peinture murale environ %2 mm sans fissure</translation>
        </message>
        <message>
            <source>%1 mm wet</source>
            <translation>%1 mm mouillé</translation>
        </message>
        <message>
            <source>%1 times the base coat (%2 to %3), aimed at %4</source>
            <translation>%1 fois la couche de base (%2 à %3), visé %4</translation>
        </message>
        <message>
            <source>%1 °C in the room</source>
            <translation>%1 °C dans la pièce</translation>
        </message>
        <message>
            <source>%1 °C; %2 to %3 are the usual room, below %4 the binder&apos;s lowest film-forming temperature is near</source>
            <translation>%1 °C ; la pièce usuelle a %2 à %3, sous %4 la température minimale de formation du film est proche</translation>
        </message>
        <message>
            <source>&apos;%1&apos; %2 (%3 to %4), aimed at %5</source>
            <translation>« %1 » %2 (%3 à %4), visé %5</translation>
        </message>
        <message>
            <source>&apos;%1&apos; and &apos;%2&apos; a factor of %3 apart</source>
            <translation>« %1 » et « %2 » à un facteur %3 l’un de l’autre</translation>
        </message>
        <message>
            <source>&apos;%1&apos; flows %2 times as slowly as &apos;%3&apos;, both against what they aim at: where they meet, one may sink or slide.</source>
            <translation>« %1 » coule %2 fois plus lentement que « %3 », chacun rapporté à son but : là où ils se touchent, l’un peut s’enfoncer ou glisser.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; holds much more added water than &apos;%2&apos;: it dries later and thinner, and parts that dry at another rate are told to pull cracks open.</source>
            <translation>« %1 » contient bien plus d’eau ajoutée que « %2 » : il sèche plus tard et plus mince, et des parties qui sèchent à un autre rythme ouvriraient des fissures.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is an ink and may start thinner than the base coat: it then takes body, not water.</source>
            <translation>« %1 » est une encre et peut démarrer plus fluide que la couche de base : il lui faut alors du corps, pas d’eau.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is more than half a year old: smell it, strain it, and test its flow anew before it counts.</source>
            <translation>« %1 » a plus de six mois : sentez-le, filtrez-le et retestez son écoulement avant de compter dessus.</translation>
        </message>
        <message>
            <source>&apos;%1&apos;: its share must be above %2.</source>
            <translation>« %1 » : sa part doit être supérieure à %2.</translation>
        </message>
        <message>
            <source>A canvas must be 0 to 500 mm deep.</source>
            <translation>Une toile doit avoir 0 à 500 mm de profondeur.</translation>
        </message>
        <message>
            <source>A canvas must measure between 10 mm and 10 m each way.</source>
            <translation>Une toile doit mesurer entre 10 mm et 10 m par côté.</translation>
        </message>
        <message>
            <source>A cell test takes 0 to 3600 seconds.</source>
            <translation>Un test de cellules dure 0 à 3600 secondes.</translation>
        </message>
        <message>
            <source>A class has 1 to 500 places.</source>
            <translation>Un cours compte 1 à 500 places.</translation>
        </message>
        <message>
            <source>A heavy colour lay on a light one.</source>
            <translation>Une couleur lourde reposait sur une légère.</translation>
        </message>
        <message>
            <source>A jar in the brand book is damaged; restore a backup of it.</source>
            <translation>Un bocal du carnet est endommagé ; restaurez une sauvegarde.</translation>
        </message>
        <message>
            <source>A jar must hold 0.1 mL to 1000 L.</source>
            <translation>Un bocal doit contenir de 0,1 mL à 1000 L.</translation>
        </message>
        <message>
            <source>A name holds at most 200 bytes.</source>
            <translation>Un nom compte au plus 200 octets.</translation>
        </message>
        <message>
            <source>A price needs the container&apos;s volume above 0 and an amount of 0 or more.</source>
            <translation>Un prix demande un contenant au-dessus de 0 et un montant de 0 ou plus.</translation>
        </message>
        <message>
            <source>Additive to one part of paint must be 0 to 100.</source>
            <translation>L’additif pour une part de peinture doit être de 0 à 100.</translation>
        </message>
        <message>
            <source>Air was whipped in.</source>
            <translation>De l’air a été battu dedans.</translation>
        </message>
        <message>
            <source>Alcohol and solvents catch fire from a spark at room temperature: no flame, heat gun or switch near them until the room is aired; follow the label.</source>
            <translation>Alcool et solvants s’enflamment d’une étincelle à température ambiante : ni flamme, ni pistolet, ni interrupteur près d’eux avant d’avoir aéré ; suivez l’étiquette.</translation>
        </message>
        <message>
            <source>Blowing for long makes dizzy: pause, and never draw breath through the straw.</source>
            <translation>Souffler longtemps étourdit : faites des pauses et n’inspirez jamais par la paille.</translation>
        </message>
        <message>
            <source>Dry air, a fan or the sun dried the skin too fast.</source>
            <translation>Air sec, ventilateur ou soleil ont séché la peau trop vite.</translation>
        </message>
        <message>
            <source>Gloves, good air, no food or drink at the bench. Follow the label and safety data sheet of every product; ask trained people where in doubt.</source>
            <translation>Gants, bon air, ni nourriture ni boisson à l’établi. Suivez l’étiquette et la fiche de sécurité de chaque produit ; en cas de doute, demandez à des personnes formées.</translation>
        </message>
        <message>
            <source>Grease or silicone lay between the coats.</source>
            <translation>Il y avait de la graisse ou du silicone entre les couches.</translation>
        </message>
        <message>
            <source>It dried on a slope, so that pools stood deeper.</source>
            <translation>Cela a séché en pente, les flaques étaient plus profondes.</translation>
        </message>
        <message>
            <source>It dried on a slope.</source>
            <translation>Cela a séché en pente.</translation>
        </message>
        <message>
            <source>It flows %1 times as fast as aimed at: it may run off with the tilt, slide from what lies under it, or blend to mud.</source>
            <translation>Il coule %1 fois plus vite que voulu : il peut s’écouler à l’inclinaison, glisser de son fond ou virer à la boue.</translation>
        </message>
        <message>
            <source>It flows %1 times as slowly as aimed at: it may stand on its neighbours, sink into them as lumps, or leave a thicker film that dries later.</source>
            <translation>Il coule %1 fois plus lentement que voulu : il peut rester posé sur ses voisins, s’y enfoncer en paquets ou laisser un film plus épais qui sèche plus tard.</translation>
        </message>
        <message>
            <source>It has stood since its test and may have thickened: stir it and test it again.</source>
            <translation>Il a reposé depuis son test et a pu épaissir : remuez et testez de nouveau.</translation>
        </message>
        <message>
            <source>It has stood: stir it before it is poured.</source>
            <translation>Il a reposé : remuez avant de couler.</translation>
        </message>
        <message>
            <source>It is %1 °C colder than the base coat was; its flow will change as it comes to the room&apos;s temperature.</source>
            <translation>Il est %1 °C plus froid que ne l’était la couche de base ; son écoulement changera jusqu’à la température de la pièce.</translation>
        </message>
        <message>
            <source>It is %1 °C warmer than the base coat was; its flow will change as it comes to the room&apos;s temperature.</source>
            <translation>Il est %1 °C plus chaud que ne l’était la couche de base ; son écoulement changera jusqu’à la température de la pièce.</translation>
        </message>
        <message>
            <source>It may match, but its tests are not exact enough to tell: film it once more.</source>
            <translation>Il est peut-être accordé, mais ses tests ne sont pas assez précis : filmez-le encore une fois.</translation>
        </message>
        <message>
            <source>It needs a name.</source>
            <translation>Il faut un nom.</translation>
        </message>
        <message>
            <source>It was poured over a picture that was not dry.</source>
            <translation>On a coulé sur un tableau qui n’était pas sec.</translation>
        </message>
        <message>
            <source>It was tilted too far or too long.</source>
            <translation>On a incliné trop fort ou trop longtemps.</translation>
        </message>
        <message>
            <source>It was tilted too far.</source>
            <translation>On a trop incliné.</translation>
        </message>
        <message>
            <source>Its tests are not exact enough to tell: film it once more.</source>
            <translation>Ses tests ne sont pas assez précis : filmez-le encore une fois.</translation>
        </message>
        <message>
            <source>Keep cables of lamp and camera off the table and hands dry; mains and water do not go together.</source>
            <translation>Gardez les câbles de lampe et de caméra hors de la table et les mains sèches ; secteur et eau ne vont pas ensemble.</translation>
        </message>
        <message>
            <source>Layers of unlike flow dried at unlike rates.</source>
            <translation>Des couches d’écoulement inégal ont séché à des rythmes inégaux.</translation>
        </message>
        <message>
            <source>Loosen it with a little medium first, press out the lumps, then add the rest.</source>
            <translation>D’abord l’assouplir avec un peu de médium, écraser les grumeaux, puis ajouter le reste.</translation>
        </message>
        <message>
            <source>Mark paint cups and bottles, water bottles too; a container that held paint is never used for food again. Keep children and animals away.</source>
            <translation>Marquez gobelets et flacons, ceux d’eau aussi ; un récipient qui a contenu de la peinture ne sert plus jamais aux aliments. Éloignez enfants et animaux.</translation>
        </message>
        <message>
            <source>May need no water at all.</source>
            <translation>N’a peut-être besoin d’aucune eau.</translation>
        </message>
        <message>
            <source>More water than any advice allows: the film may be weak and hold badly.</source>
            <translation>Plus d’eau qu’aucun conseil n’en admet : le film peut être faible et mal tenir.</translation>
        </message>
        <message>
            <source>Much water: the binder is spread thin, and the film may turn out chalky or weak.</source>
            <translation>Beaucoup d’eau : le liant est étiré, le film peut devenir farineux ou faible.</translation>
        </message>
        <message>
            <source>Neighbours flowed unlike.</source>
            <translation>Les voisins coulaient inégalement.</translation>
        </message>
        <message>
            <source>Nobody has measured how it flows.</source>
            <translation>Personne n’a mesuré son écoulement.</translation>
        </message>
        <message>
            <source>Often too thin already: mix it into a thicker paint instead.</source>
            <translation>Souvent déjà trop fluide : mélangez-la plutôt à une peinture plus épaisse.</translation>
        </message>
        <message>
            <source>On small canvases more runs off: up to %1 L on a square metre is told for them (common practice).</source>
            <translation>Sur les petites toiles il s’en écoule davantage : on parle de jusqu’à %1 L par mètre carré (usage courant).</translation>
        </message>
        <message>
            <source>Opposite colours lay side by side.</source>
            <translation>Des couleurs opposées étaient côte à côte.</translation>
        </message>
        <message>
            <source>Paint and rinse water do not go into drains or ground: let them settle, use the clear part again, dry the rest. Local rules decide; colours with heavy metals are hazardous waste.</source>
            <translation>Peinture et eau de rinçage ne vont ni à l’égout ni au sol : laissez décanter, réutilisez la partie claire, séchez le reste. Les règles locales décident ; les couleurs aux métaux lourds sont des déchets dangereux.</translation>
        </message>
        <message>
            <source>Powder: raise no dust and wet it at once; some pigments harm when breathed. A dust mask is no respirator: what is needed stands on the label or is said by a professional.</source>
            <translation>Poudre : pas de poussière, mouillez aussitôt ; certains pigments nuisent si on les respire. Un masque à poussière n’est pas un appareil respiratoire : ce qu’il faut est sur l’étiquette ou dit par un professionnel.</translation>
        </message>
        <message>
            <source>Say how it turned out: your own match band is learned from it.</source>
            <translation>Dites comment c’est venu : on en apprend l’accord dont vos tableaux ont besoin.</translation>
        </message>
        <message>
            <source>Something was added since its last test, so its flow is not known.</source>
            <translation>Quelque chose a été ajouté depuis son dernier test ; son écoulement n’est pas connu.</translation>
        </message>
        <message>
            <source>Stir a little of the medium in first, then the rest.</source>
            <translation>Incorporer d’abord un peu de médium, puis le reste.</translation>
        </message>
        <message>
            <source>Straining was skipped.</source>
            <translation>Le filtrage a été omis.</translation>
        </message>
        <message>
            <source>Take a photo a month on: late cracks only show then.</source>
            <translation>Prenez une photo un mois après : les fissures tardives ne se voient qu’alors.</translation>
        </message>
        <message>
            <source>The activator was too thick.</source>
            <translation>L’activateur était trop épais.</translation>
        </message>
        <message>
            <source>The activator was too thin.</source>
            <translation>L’activateur était trop fluide.</translation>
        </message>
        <message>
            <source>The amounts follow your earlier pours: %1 pours of this kind took %2 times what was planned (%3 to %4).</source>
            <translation>Les quantités suivent vos coulées précédentes : %1 de ce genre ont pris %2 fois ce qui était prévu (%3 à %4).</translation>
        </message>
        <message>
            <source>The amounts follow your journal: %1 pours of this kind took %2 times what was planned (%3 to %4).</source>
            <translation>Les quantités suivent votre journal : %1 coulées de ce genre ont pris %2 fois ce qui était prévu (%3 à %4).</translation>
        </message>
        <message>
            <source>The colour was thicker than its ground.</source>
            <translation>La couleur était plus épaisse que son fond.</translation>
        </message>
        <message>
            <source>The colour was thinner than its ground.</source>
            <translation>La couleur était plus fluide que son fond.</translation>
        </message>
        <message>
            <source>The colours were too thin.</source>
            <translation>Les couleurs étaient trop fluides.</translation>
        </message>
        <message>
            <source>The dry film was bent.</source>
            <translation>Le film sec a été plié.</translation>
        </message>
        <message>
            <source>The factor of the plan must lie between 0.05 and 20.</source>
            <translation>Le facteur du plan doit se situer entre 0,05 et 20.</translation>
        </message>
        <message>
            <source>The film is thick: it skins over while it is wet below, which is the first cause named for crazing.</source>
            <translation>Le film est épais : une peau se forme alors qu’il est mouillé dessous ; c’est la première cause citée des peaux déchirées.</translation>
        </message>
        <message>
            <source>The film was thick.</source>
            <translation>Le film était épais.</translation>
        </message>
        <message>
            <source>The lower coat was chalky.</source>
            <translation>La couche du dessous était farineuse.</translation>
        </message>
        <message>
            <source>The mixes rested too short for the bubbles to rise.</source>
            <translation>Les mélanges ont reposé trop peu pour que les bulles montent.</translation>
        </message>
        <message>
            <source>The paint was too thick to level.</source>
            <translation>La peinture était trop épaisse pour s’étaler.</translation>
        </message>
        <message>
            <source>The paint was too thin and ran off.</source>
            <translation>La peinture était trop fluide et s’est écoulée.</translation>
        </message>
        <message>
            <source>The paints under it do not react, though the cup did.</source>
            <translation>Les peintures dessous ne réagissent pas, alors que le gobelet réagissait.</translation>
        </message>
        <message>
            <source>The reserve must be 0 to 100 %.</source>
            <translation>La réserve doit être de 0 à 100 %.</translation>
        </message>
        <message>
            <source>The room is cold: it dries slowly and skins over wet paint.</source>
            <translation>La pièce est froide : cela sèche lentement et une peau se forme sur la peinture mouillée.</translation>
        </message>
        <message>
            <source>The room is so cold that the film may not form.</source>
            <translation>La pièce est si froide que le film risque de ne pas se former.</translation>
        </message>
        <message>
            <source>The room was cold.</source>
            <translation>La pièce était froide.</translation>
        </message>
        <message>
            <source>The technique pours nothing.</source>
            <translation>Cette technique ne coule rien.</translation>
        </message>
        <message>
            <source>The waste must be 0 to 200 %.</source>
            <translation>La perte doit être de 0 à 200 %.</translation>
        </message>
        <message>
            <source>The water must be 0 to 50 %.</source>
            <translation>L’eau doit être de 0 à 50 %.</translation>
        </message>
        <message>
            <source>There is no canvas; give its size.</source>
            <translation>Il n’y a pas de toile ; donnez sa taille.</translation>
        </message>
        <message>
            <source>There is no cup to check; put the cups on the bench first.</source>
            <translation>Il n’y a pas de gobelet à vérifier ; mettez d’abord les gobelets sur l’établi.</translation>
        </message>
        <message>
            <source>There is no label to print.</source>
            <translation>Il n’y a pas d’étiquette à imprimer.</translation>
        </message>
        <message>
            <source>There is no such jar on the shelf.</source>
            <translation>Ce bocal n’est pas sur l’étagère.</translation>
        </message>
        <message>
            <source>There is not so much in this jar.</source>
            <translation>Il n’y en a pas autant dans ce bocal.</translation>
        </message>
        <message>
            <source>There must be 0 to 100 tests of a cup.</source>
            <translation>Il faut 0 à 100 tests par gobelet.</translation>
        </message>
        <message>
            <source>There must be 1 to 1000 canvases of a kind.</source>
            <translation>Il faut 1 à 1000 toiles d’un même genre.</translation>
        </message>
        <message>
            <source>There was oil or grease on the ground.</source>
            <translation>Il y avait de l’huile ou de la graisse sur le fond.</translation>
        </message>
        <message>
            <source>There was too little paint.</source>
            <translation>Il y avait trop peu de peinture.</translation>
        </message>
        <message>
            <source>They were mixed too much on the way to the canvas.</source>
            <translation>Elles ont été trop mêlées avant la toile.</translation>
        </message>
        <message>
            <source>Thinner parts dried at another rate and pulled the thicker ones open.</source>
            <translation>Les parties plus minces ont séché autrement et ont ouvert les plus épaisses.</translation>
        </message>
        <message>
            <source>Too few pours to tell how much more or less than planned yours take; three or more are needed.</source>
            <translation>Trop peu de coulées pour dire combien de plus ou de moins que prévu vous utilisez ; il en faut trois ou plus.</translation>
        </message>
        <message>
            <source>Too much water spread the binder thin.</source>
            <translation>Trop d’eau a étiré le liant.</translation>
        </message>
        <message>
            <source>Torch or heat gun: nothing that burns or gives off vapour nearby, no loose sleeves or hair, not over plastic cups, short passes, something to put out a fire at hand.</source>
            <translation>Chalumeau ou pistolet à chaleur : rien d’inflammable ni de volatil à proximité, pas de manches ni de cheveux lâches, pas au-dessus de gobelets en plastique, passages courts, de quoi éteindre sous la main.</translation>
        </message>
        <message>
            <source>Touch dry about now; leave it level and covered.</source>
            <translation>À peu près sec au toucher ; laissez-le à plat et couvert.</translation>
        </message>
        <message>
            <source>Two people carry a large wet canvas; wet paint on the floor is slippery.</source>
            <translation>On porte à deux une grande toile mouillée ; la peinture au sol est glissante.</translation>
        </message>
        <message>
            <source>Uncured resin and hardener can make the skin allergic for life; thin gloves protect little. Follow the data sheet and ask for the gloves it names.</source>
            <translation>Résine et durcisseur non durcis peuvent rendre la peau allergique à vie ; les gants minces protègent peu. Suivez la fiche et demandez les gants qu’elle nomme.</translation>
        </message>
        <message>
            <source>Varnish or resin not before this day, and only if it feels hard and no longer cool; the varnish&apos;s own sheet decides.</source>
            <translation>Vernis ou résine pas avant ce jour, et seulement si c’est dur et n’est plus frais ; la fiche du vernis décide.</translation>
        </message>
        <message>
            <source>Very much water: a chalky, weak film and poor hold are warned of.</source>
            <translation>Vraiment beaucoup d’eau : on met en garde contre un film farineux, faible, qui tient mal.</translation>
        </message>
        <message>
            <source>Water is not counted: what you thin with comes on top.</source>
            <translation>L’eau n’est pas comptée : ce qui dilue s’y ajoute.</translation>
        </message>
        <message>
            <source>Wet it to a paste first and raise no dust; it settles, so stir before every test, and its sparkle can mislead the camera.</source>
            <translation>D’abord mouiller en pâte sans faire de poussière ; elle se dépose, remuez donc avant chaque test, et ses reflets peuvent tromper la caméra.</translation>
        </message>
        <message>
            <source>added water of every cup</source>
            <translation>l’eau ajoutée de chaque gobelet</translation>
        </message>
        <message>
            <source>bare</source>
            <translation>toile visible</translation>
        </message>
        <message>
            <source>base of the medium</source>
            <translation>base du médium</translation>
        </message>
        <message>
            <source>bloom</source>
            <translation>fleur</translation>
        </message>
        <message>
            <source>blown</source>
            <translation>soufflé</translation>
        </message>
        <message>
            <source>blown open on a thick pillow of base, then spun</source>
            <translation>ouvert au souffle sur un épais coussin de base, puis tourné</translation>
        </message>
        <message>
            <source>chalky</source>
            <translation>farineux</translation>
        </message>
        <message>
            <source>colours laid on a wet base and wiped over with an activator</source>
            <translation>couleurs posées sur un fond mouillé puis balayées avec un activateur</translation>
        </message>
        <message>
            <source>cracks</source>
            <translation>fissures</translation>
        </message>
        <message>
            <source>crazing</source>
            <translation>peau déchirée</translation>
        </message>
        <message>
            <source>flow additive</source>
            <translation>additif d’écoulement</translation>
        </message>
        <message>
            <source>how long ago every cup was tested</source>
            <translation>depuis quand chaque gobelet est testé</translation>
        </message>
        <message>
            <source>last test: %1 times the base coat (%2 to %3), aimed at %4</source>
            <translation>dernier test : %1 fois la couche de base (%2 à %3), visé %4</translation>
        </message>
        <message>
            <source>lost cells</source>
            <translation>cellules perdues</translation>
        </message>
        <message>
            <source>measured ratios; that this happens from %1 to %2 on is told in words, nobody has published numbers</source>
            <translation>rapports mesurés ; que cela arrive à partir de %1 à %2 se raconte, personne n’a publié de chiffres</translation>
        </message>
        <message>
            <source>muddy</source>
            <translation>boueux</translation>
        </message>
        <message>
            <source>no test of this cup</source>
            <translation>aucun test de ce gobelet</translation>
        </message>
        <message>
            <source>open</source>
            <translation>ouvert</translation>
        </message>
        <message>
            <source>open, dirty or flip pour without a wet base</source>
            <translation>coulée libre, mêlée ou retournée, sans fond mouillé</translation>
        </message>
        <message>
            <source>paints change by %1 to %2 % a degree (the upper end after ASTM D4212)</source>
            <translation>les peintures changent de %1 à %2 % par degré (le haut selon ASTM D4212)</translation>
        </message>
        <message>
            <source>peeling</source>
            <translation>se décolle</translation>
        </message>
        <message>
            <source>pits</source>
            <translation>cratères</translation>
        </message>
        <message>
            <source>ring</source>
            <translation>anneau</translation>
        </message>
        <message>
            <source>ring or flip pour over a wet base</source>
            <translation>coulée en anneau ou retournée sur un fond mouillé</translation>
        </message>
        <message>
            <source>sag</source>
            <translation>coulures au bord</translation>
        </message>
        <message>
            <source>slid</source>
            <translation>glissé</translation>
        </message>
        <message>
            <source>sunk</source>
            <translation>enfoncé</translation>
        </message>
        <message>
            <source>swipe</source>
            <translation>balayage</translation>
        </message>
        <message>
            <source>temperature of every cup</source>
            <translation>la température de chaque gobelet</translation>
        </message>
        <message>
            <source>temperature of the room</source>
            <translation>la température de la pièce</translation>
        </message>
        <message>
            <source>the mixes were not strained</source>
            <translation>les mélanges n’étaient pas filtrés</translation>
        </message>
        <message>
            <source>the mixes were strained</source>
            <translation>les mélanges étaient filtrés</translation>
        </message>
        <message>
            <source>thickness of the film</source>
            <translation>l’épaisseur du film</translation>
        </message>
        <message>
            <source>thin colours blown out over a wet base</source>
            <translation>couleurs fluides soufflées sur un fond mouillé</translation>
        </message>
        <message>
            <source>varnish of the medium</source>
            <translation>vernis du médium</translation>
        </message>
        <message>
            <source>A cup&apos;s inner diameters and height must lie between 5 and 2000 mm.</source>
            <translation>Les diamètres intérieurs et la hauteur d’un gobelet doivent se situer entre 5 et 2000 mm.</translation>
        </message>
        <message>
            <source>the room is colder than 18 °C</source>
            <translation>la pièce est à moins de 18 °C</translation>
        </message>
        <message>
            <source>below 10 °C the film may not form at all: bring it into the warm</source>
            <translation>sous 10 °C le film peut ne pas se former du tout : mettez-le au chaud</translation>
        </message>
        <message>
            <source>the air is damper than 60 %</source>
            <translation>l’air a plus de 60 % d’humidité</translation>
        </message>
        <message>
            <source>the film is thick</source>
            <translation>le film est épais</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: outside all commonly quoted advice (%2 %); the binder is spread too thin.</source>
            <translation>L’eau ajoutée fait %1 % du gobelet : hors de tous les conseils courants (%2 %) ; le liant est trop étalé.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: more than commonly quoted advice allows (%2 %); go on with medium.</source>
            <translation>L’eau ajoutée fait %1 % du gobelet : plus que ne le permettent les conseils courants (%2 %) ; continuez avec du médium.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: above the %2 % that commonly quoted advice calls safe for the film.</source>
            <translation>L’eau ajoutée fait %1 % du gobelet : au-dessus des %2 % que les conseils courants disent sûrs pour le film.</translation>
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
            <source>The test came %1 s after stirring; stir, wait %2 s and test, the same for every cup.</source>
            <translation>Le test est venu %1 s après avoir remué ; remuez, attendez %2 s et testez, de même pour chaque gobelet.</translation>
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
            <source>Of medium, stir in %1 mL and film it again.</source>
            <translation>De médium, incorporez %1 mL et filmez de nouveau.</translation>
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
            <source>A step of %1 mL is too much at once for this cup; measure it out with a teaspoon instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec une cuillère à café.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with a quarter teaspoon instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec un quart de cuillère à café.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with %2 mL marks of a pipette instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec les traits de %2 mL d’une pipette.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with drops instead.</source>
            <translation>Un pas de %1 mL est trop d’un coup pour ce gobelet ; mesurez plutôt avec des gouttes.</translation>
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
            <source>activator</source>
            <translation>activateur</translation>
        </message>
        <message>
            <source>against</source>
            <translation>parle contre</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>couche de base</translation>
        </message>
        <message>
            <source>blob</source>
            <translation>trop épais, un pâté</translation>
        </message>
        <message>
            <source>cells</source>
            <translation>cellules</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>couleur</translation>
        </message>
        <message>
            <source>drowned</source>
            <translation>trop fluide, noyé</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>sec</translation>
        </message>
        <message>
            <source>fair</source>
            <translation>moyen</translation>
        </message>
        <message>
            <source>fits</source>
            <translation>va avec</translation>
        </message>
        <message>
            <source>good</source>
            <translation>bon</translation>
        </message>
        <message>
            <source>lacing</source>
            <translation>dentelle</translation>
        </message>
        <message>
            <source>later</source>
            <translation>plus tard</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>médium</translation>
        </message>
        <message>
            <source>none</source>
            <translation>rien</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>non mesuré</translation>
        </message>
        <message>
            <source>poor</source>
            <translation>mauvais</translation>
        </message>
        <message>
            <source>wet</source>
            <translation>mouillé</translation>
        </message>
        <message>
            <source>Paint: follow its label. No food container.</source>
            <translation>Peinture : suivre son étiquette. Pas un récipient alimentaire.</translation>
        </message>
        <message>
            <source>What was counted must be more than nothing.</source>
            <translation>Ce qui a été compté doit être plus que rien.</translation>
        </message>
        <message>
            <source>The picture must be in colour.</source>
            <translation>L’image doit être en couleurs.</translation>
        </message>
        <message>
            <source>The scale must lie between 0.0001 and 10 mm per pixel.</source>
            <translation>L’échelle doit être entre 0,0001 et 10 mm par pixel.</translation>
        </message>
        <message>
            <source>The scale&apos;s uncertainty must lie between 0 and 0.5.</source>
            <translation>L’incertitude de l’échelle doit être entre 0 et 0,5.</translation>
        </message>
        <message>
            <source>The cells do not stand out from what surrounds them; take the photo in even light and without glare.</source>
            <translation>Les cellules ne ressortent pas ; prendre la photo sous une lumière égale et sans reflet.</translation>
        </message>
        <message>
            <source>The picture could not be worked on; there may not be enough memory.</source>
            <translation>L’image n’a pas pu être traitée ; la mémoire manque peut-être.</translation>
        </message>
        <message>
            <source>The pages could not be drawn; there may not be enough memory.</source>
            <translation>Les pages n’ont pas pu être dessinées ; la mémoire manque peut-être.</translation>
        </message>
        <message>
            <source>Only %1 closed cells were found, %2 are needed; show a larger piece, or come closer if they are tiny.</source>
            <translation>Seulement %1 cellules fermées trouvées, il en faut %2 ; montrer un plus grand morceau, ou s’approcher si elles sont minuscules.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no picture that can be read; save it as JPEG or PNG.</source>
            <translation>« %1 » n’est pas une image lisible ; l’enregistrer en JPEG ou PNG.</translation>
        </message>
        <message>
            <source>This label is of pouring medium, which is no cup on the bench.</source>
            <translation>Cette étiquette est celle d’un médium de coulage, qui n’est pas un gobelet de l’établi.</translation>
        </message>
        <message>
            <source>There is no label to read.</source>
            <translation>Il n’y a pas d’étiquette à lire.</translation>
        </message>
        <message>
            <source>A plan holds at most 100 colours.</source>
            <translation>Un plan contient au plus 100 couleurs.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is a folder; name a file in it.</source>
            <translation>&apos;%1&apos; est un dossier ; indiquer un fichier dedans.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; cannot be read; check its name and rights.</source>
            <translation>&apos;%1&apos; ne peut pas être lu ; vérifier le nom et les droits.</translation>
        </message>
        <message>
            <source>The label&apos;s role is not known to this program.</source>
            <translation>Ce programme ne connaît pas le rôle indiqué sur l’étiquette.</translation>
        </message>
        <message>
            <source>The label tells of more water than there is in the cup.</source>
            <translation>L’étiquette indique plus d’eau qu’il n’y a dans le gobelet.</translation>
        </message>
        <message>
            <source>A ratio must be above 0.</source>
            <translation>Un rapport doit être supérieur à 0.</translation>
        </message>
        <message>
            <source>This medium flows faster than the base coat. A thin paint mixed with it may start too thin: add body, not water.</source>
            <translation>Ce médium coule plus vite que la couche de base. Une peinture fluide mélangée avec lui peut être trop fluide dès le départ : ajouter du corps, pas de l’eau.</translation>
        </message>
        <message>
            <source>4:1 and 3:1 are both in use and it matters little which; what matters is to keep to one. Parts by volume and by weight are not the same.</source>
            <translation>4:1 et 3:1 sont tous deux en usage et le choix importe peu ; l’important est de s’y tenir. Les parts en volume et en poids ne sont pas les mêmes.</translation>
        </message>
        <message>
            <source>No code of a label can be read on this photo; take it again from closer, straight on and sharp, with the whole code and its white rim in the picture.</source>
            <translation>Aucun code d’étiquette n’est lisible sur cette photo ; la reprendre de plus près, bien en face et nette, avec tout le code et sa marge blanche dans l’image.</translation>
        </message>
        <message>
            <source>The code on this photo is not that of a label of this program; photograph the label that was printed for the jar.</source>
            <translation>Le code sur cette photo n’est pas celui d’une étiquette de ce programme ; photographier l’étiquette imprimée pour le bocal.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; cannot be written (%2); check the folder and the room on the disk.</source>
            <translation>&apos;%1&apos; ne peut pas être écrit (%2) ; vérifier le dossier et la place sur le disque.</translation>
        </message>
        <message>
            <source>Water that left-overs hold already is not counted; a cup&apos;s share of water is what is added to it from now on.</source>
            <translation>L’eau déjà contenue dans les restes n’est pas comptée ; la part d’eau d’un gobelet est ce qu’on y ajoute à partir de maintenant.</translation>
        </message>
        <message>
            <source>The picture of &apos;%1&apos; that was counted cannot be kept; count on a photo instead.</source>
            <translation>L’image de &apos;%1&apos; qui a été comptée ne peut pas être conservée ; compter plutôt sur une photo.</translation>
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
            <source>What is wanted is a number, 1 for the base coat&apos;s own flow.</source>
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
        <message>
            <source>This is not the whole code of a label. Read it again; a hand scanner must be set to the keyboard that is in use.</source>
            <translation>Ce n’est pas le code complet d’une étiquette. Le relire ; un lecteur à main doit être réglé sur le clavier utilisé.</translation>
        </message>
        <message>
            <source>Mixed on %1.</source>
            <translation>Mélangé le %1.</translation>
        </message>
        <message>
            <source>%1 of water is in it besides; it is written down as added.</source>
            <translation>S’y ajoutent %1 d’eau, déjà dedans, notés comme ajoutés.</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>activateur</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Camera</name>
        <message>
            <source>the camera&apos;s own choice</source>
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
            <source>Waiting for the camera&apos;s first picture …</source>
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
        <message>
            <source>The camera sends no picture; close other programs that use it, or choose another one.</source>
            <translation>La caméra n’envoie aucune image ; fermer les autres programmes qui l’utilisent ou en choisir une autre.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::CameraWorker</name>
        <message>
            <source>This camera&apos;s pictures cannot be read; choose another size in the settings.</source>
            <translation>Les images de cette caméra sont illisibles ; choisir une autre taille dans les réglages.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::CellRoom</name>
        <message>
            <source>&apos;%1&apos; is no length above 0.</source>
            <translation>« %1 » n’est pas une longueur supérieure à 0.</translation>
        </message>
        <message>
            <source>The two ends lie too close together for a scale.</source>
            <translation>Les deux bouts sont trop proches pour une échelle.</translation>
        </message>
        <message>
            <source>Counting …</source>
            <translation>Comptage …</translation>
        </message>
        <message numerus="yes">
            <source>%n whole cell(s) on %1 cm²</source>
            <translation>
                <numerusform>%n cellule entière sur %1 cm²</numerusform>
                <numerusform>%n cellules entières sur %1 cm²</numerusform>
            </translation>
        </message>
        <message>
            <source>Eight of ten lie between %1 and %2 mm.</source>
            <translation>Huit sur dix sont entre %1 et %2 mm.</translation>
        </message>
        <message>
            <source>Scale: %1 mm to a pixel, good to %2.</source>
            <translation>Échelle : %1 mm par pixel, à %2 près.</translation>
        </message>
        <message>
            <source>Point at both ends of something of known length, or write the size of a pixel.</source>
            <translation>Pointer les deux bouts d’une longueur connue, ou écrire la taille d’un pixel.</translation>
        </message>
        <message>
            <source>The second has more cells:</source>
            <translation>La deuxième a plus de cellules :</translation>
        </message>
        <message>
            <source>The second has fewer cells:</source>
            <translation>La deuxième a moins de cellules :</translation>
        </message>
        <message>
            <source>They are alike:</source>
            <translation>Elles se valent :</translation>
        </message>
        <message>
            <source>These photos cannot tell which has more:</source>
            <translation>Ces photos ne disent pas laquelle en a plus :</translation>
        </message>
        <message>
            <source>%1 times as many (%2 to %3), %4 times as large (%5 to %6).</source>
            <translation>%1 fois autant (%2 à %3), %4 fois la taille (%5 à %6).</translation>
        </message>
        <message>
            <source>A part is four whole numbers: x, y, width, height.</source>
            <translation>Une partie est donnée par quatre nombres entiers : x, y, largeur, hauteur.</translation>
        </message>
        <message>
            <source>This part does not lie on the photo.</source>
            <translation>Cette partie ne se trouve pas sur la photo.</translation>
        </message>
        <message>
            <source>Point at two opposite corners of the part.</source>
            <translation>Pointer deux coins opposés de la partie.</translation>
        </message>
        <message>
            <source>Reading …</source>
            <translation>Lecture …</translation>
        </message>
        <message>
            <source>The picture at %1 s of the clip.</source>
            <translation>L’image à %1 s du clip.</translation>
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
        <message>
            <source>measured – its session is not open</source>
            <translation>mesuré – sa séance n’est pas ouverte</translation>
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
        <message>
            <source>%1, film %2</source>
            <translation>%1, film %2</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>vu</translation>
        </message>
        <message>
            <source>95 of 100 lie here</source>
            <translation>95 sur 100 sont ici</translation>
        </message>
        <message>
            <source>There is no cup on the bench yet.</source>
            <translation>Il n’y a pas encore de gobelet sur l’établi.</translation>
        </message>
        <message>
            <source>The base coat is what others are compared with; choose another cup.</source>
            <translation>Les autres gobelets se comparent à la couche de base ; choisissez-en un autre.</translation>
        </message>
        <message>
            <source>Film this cup and the base coat first.</source>
            <translation>Filmez d’abord ce gobelet et la couche de base.</translation>
        </message>
        <message>
            <source>Say how much is in the cup; its path counts from there.</source>
            <translation>Dites combien il y a dans le gobelet ; son chemin se compte à partir de là.</translation>
        </message>
        <message>
            <source>measured, with 95 % interval</source>
            <translation>mesuré, avec l’intervalle à 95 %</translation>
        </message>
        <message>
            <source>likeliest path</source>
            <translation>chemin le plus probable</translation>
        </message>
        <message>
            <source>95 of 100 paths lie here</source>
            <translation>95 chemins sur 100 passent ici</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>mesuré</translation>
        </message>
        <message>
            <source>share of the stream that is left</source>
            <translation>part du filet encore là</translation>
        </message>
        <message>
            <source>it broke here</source>
            <translation>rupture du filet</translation>
        </message>
        <message>
            <source>its fading, as measured</source>
            <translation>son effacement, tel que mesuré</translation>
        </message>
        <message>
            <source>its spreading, as measured</source>
            <translation>son étalement, tel que mesuré</translation>
        </message>
    </context>
    <context>
        <name>flowkin::FilmStand</name>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>The folder of films is full; close old sessions.</source>
            <translation>Le dossier des films est plein ; fermez d’anciennes séances.</translation>
        </message>
        <message>
            <source>Stopped</source>
            <translation>Arrêté</translation>
        </message>
        <message>
            <source>No picture</source>
            <translation>Pas d’image</translation>
        </message>
        <message>
            <source>Test runs</source>
            <translation>Essai en cours</translation>
        </message>
        <message>
            <source>Filming</source>
            <translation>Filme</translation>
        </message>
        <message>
            <source>No cup yet</source>
            <translation>Pas encore de gobelet</translation>
        </message>
        <message>
            <source>Ready</source>
            <translation>Prêt</translation>
        </message>
        <message>
            <source>Measuring</source>
            <translation>Mesure</translation>
        </message>
        <message>
            <source>Enough films</source>
            <translation>Assez de films</translation>
        </message>
        <message>
            <source>Name the base coat on the bench first.</source>
            <translation>Nommez d’abord la couche de base sur l’établi.</translation>
        </message>
        <message>
            <source>Hold the stick still until it only drips.</source>
            <translation>Tenez le bâton immobile jusqu’à ce qu’il ne fasse plus que goutter.</translation>
        </message>
        <message>
            <source>Leave it alone until the paint is smooth.</source>
            <translation>N’y touchez plus jusqu’à ce que la peinture soit lisse.</translation>
        </message>
        <message>
            <source>Leave it alone for ten seconds.</source>
            <translation>N’y touchez plus pendant dix secondes.</translation>
        </message>
        <message>
            <source>Stand the stick in the paint, lift it straight up, hold it.</source>
            <translation>Posez le bâton dans la peinture, levez-le tout droit, tenez-le.</translation>
        </message>
        <message>
            <source>The picture stands still; look after the camera.</source>
            <translation>L’image est figée ; vérifiez la caméra.</translation>
        </message>
        <message>
            <source>More light.</source>
            <translation>Plus de lumière.</translation>
        </message>
        <message>
            <source>Too bright: turn the lamp away.</source>
            <translation>Trop clair : détournez la lampe.</translation>
        </message>
        <message>
            <source>The camera is slow; more light makes it faster.</source>
            <translation>La caméra est lente ; plus de lumière l’accélère.</translation>
        </message>
        <message>
            <source>Hold still: the whole picture moves.</source>
            <translation>Ne bougez pas : toute l’image bouge.</translation>
        </message>
        <message>
            <source>Not sharp: focus on the test.</source>
            <translation>Flou : faites la mise au point sur l’essai.</translation>
        </message>
        <message>
            <source>The stick is not in view.</source>
            <translation>Le bâton n’est pas dans l’image.</translation>
        </message>
        <message numerus="yes">
            <source>%1: %n more</source>
            <translation>
                <numerusform>%1 : encore %n</numerusform>
                <numerusform>%1 : encore %n</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: no more</source>
            <translation>%1 : terminé</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Attendre</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Continuer</translation>
        </message>
        <message>
            <source>End this film</source>
            <translation>Terminer ce film</translation>
        </message>
        <message>
            <source>Film now</source>
            <translation>Filmer maintenant</translation>
        </message>
        <message>
            <source>Next cup</source>
            <translation>Gobelet suivant</translation>
        </message>
        <message>
            <source>To the bench</source>
            <translation>À l’établi</translation>
        </message>
        <message>
            <source>See that a lamp is mirrored in the paint. Lay one ribbon on it and take the stick away.</source>
            <translation>Veiller à ce qu’une lampe se reflète dans la peinture. Y poser un ruban et retirer le bâtonnet.</translation>
        </message>
        <message>
            <source>Put the paint down in one go, as much every time, and take the hand away.</source>
            <translation>Déposer la peinture d’un seul coup, toujours la même quantité, et retirer la main.</translation>
        </message>
        <message>
            <source>No ruler is made out: lay one with millimetres beside it, or leave the camera where it is for every cup.</source>
            <translation>Aucune règle reconnue : en poser une millimétrée à côté, ou laisser la caméra en place pour tous les gobelets.</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <translation>%1 : %2, %3</translation>
        </message>
    </context>
    <context>
        <name>flowkin::JournalReader</name>
        <message numerus="yes">
            <source>%n pour(s)</source>
            <translation>
                <numerusform>%n coulée</numerusform>
                <numerusform>%n coulées</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n judged</source>
            <translation>
                <numerusform>%n jugée</numerusform>
                <numerusform>%n jugées</numerusform>
            </translation>
        </message>
        <message>
            <source>Your pictures bear a mismatch of about %1 (%2 to %3).</source>
            <translation>Vos tableaux supportent un écart d’environ %1 (%2 à %3).</translation>
        </message>
        <message>
            <source>How large a mismatch your pictures bear: too few pours to tell.</source>
            <translation>L’écart que supportent vos tableaux : trop peu de coulées pour le dire.</translation>
        </message>
        <message>
            <source>good pours lay at %1 (%2 to %3) of the base coat.</source>
            <translation>les bonnes coulées étaient à %1 (%2 à %3) de la couche de base.</translation>
        </message>
        <message>
            <source>too few pours to tell.</source>
            <translation>trop peu de coulées pour le dire.</translation>
        </message>
        <message>
            <source>you use %1 times what is planned (%2 to %3).</source>
            <translation>vous utilisez %1 fois ce qui est prévu (%2 à %3).</translation>
        </message>
        <message>
            <source>planned against used: too few pours to tell.</source>
            <translation>prévu et utilisé : trop peu de coulées pour le dire.</translation>
        </message>
        <message>
            <source>no cup of this day</source>
            <translation>aucun gobelet de ce jour</translation>
        </message>
        <message>
            <source>As planned now: %1, %2</source>
            <translation>Comme prévu à présent : %1, %2</translation>
        </message>
        <message>
            <source>room %1</source>
            <translation>pièce %1</translation>
        </message>
        <message>
            <source>%1 humidity</source>
            <translation>%1 d’humidité</translation>
        </message>
        <message>
            <source>poured %1</source>
            <translation>coulé %1</translation>
        </message>
        <message>
            <source>planned %1</source>
            <translation>prévu %1</translation>
        </message>
        <message>
            <source>used %1</source>
            <translation>utilisé %1</translation>
        </message>
        <message>
            <source>%1 wet</source>
            <translation>%1 mouillé</translation>
        </message>
        <message>
            <source>%1 dry</source>
            <translation>%1 sec</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>non mesuré</translation>
        </message>
        <message>
            <source>%1 (%2 to %3), aimed at %4</source>
            <translation>%1 (%2 à %3), visé %4</translation>
        </message>
        <message>
            <source>%1 water</source>
            <translation>%1 d’eau</translation>
        </message>
        <message numerus="yes">
            <source>%n film(s)</source>
            <translation>
                <numerusform>%n film</numerusform>
                <numerusform>%n films</numerusform>
            </translation>
        </message>
        <message>
            <source>It turned out well.</source>
            <translation>C’est bien venu.</translation>
        </message>
        <message>
            <source>It turned out fair.</source>
            <translation>C’est moyen.</translation>
        </message>
        <message>
            <source>It turned out badly.</source>
            <translation>C’est mal venu.</translation>
        </message>
        <message>
            <source>%1: the photo is not found</source>
            <translation>%1 : la photo est introuvable</translation>
        </message>
        <message>
            <source>wet</source>
            <translation>mouillé</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>sec</translation>
        </message>
        <message>
            <source>later</source>
            <translation>plus tard</translation>
        </message>
        <message>
            <source>cells</source>
            <translation>cellules</translation>
        </message>
        <message>
            <source>cell test: lacing</source>
            <translation>test de cellules : dentelle</translation>
        </message>
        <message>
            <source>cell test: nothing happens</source>
            <translation>test de cellules : rien ne se passe</translation>
        </message>
        <message>
            <source>cell test: too thick, a blob</source>
            <translation>test de cellules : trop épais, un pâté</translation>
        </message>
        <message>
            <source>cell test: too thin, drowned</source>
            <translation>test de cellules : trop fluide, noyé</translation>
        </message>
        <message>
            <source>after %1 s</source>
            <translation>après %1 s</translation>
        </message>
        <message>
            <source>fits</source>
            <translation>concorde</translation>
        </message>
        <message>
            <source>speaks against it</source>
            <translation>parle contre</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no number.</source>
            <translation>« %1 » n’est pas un nombre.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>1 paint to %1 additive</source>
            <translation>1 de peinture pour %1 d’additif</translation>
        </message>
    </context>
    <context>
        <name>flowkin::LastCheck</name>
        <message>
            <source>Nothing measured holds the pour back.</source>
            <translation>Rien de mesuré ne retient la coulée.</translation>
        </message>
        <message>
            <source>Do not pour yet.</source>
            <translation>Ne coulez pas encore.</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>mesuré</translation>
        </message>
        <message>
            <source>follows from what was measured</source>
            <translation>découle des mesures</translation>
        </message>
        <message>
            <source>told by many, published by none</source>
            <translation>beaucoup le disent, personne ne l’a publié</translation>
        </message>
        <message>
            <source>Not known: %1.</source>
            <translation>Inconnu : %1.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Planner</name>
        <message>
            <source>Add a colour first, or take those of the bench.</source>
            <translation>Ajoutez d’abord une couleur, ou prenez celles de l’établi.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no number.</source>
            <translation>« %1 » n’est pas un nombre.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no whole number.</source>
            <translation>« %1 » n’est pas un nombre entier.</translation>
        </message>
        <message>
            <source>heavy body</source>
            <translation>corps épais</translation>
        </message>
        <message>
            <source>soft body</source>
            <translation>corps souple</translation>
        </message>
        <message>
            <source>fluid</source>
            <translation>fluide</translation>
        </message>
        <message>
            <source>ink</source>
            <translation>encre</translation>
        </message>
        <message>
            <source>powder</source>
            <translation>poudre</translation>
        </message>
        <message>
            <source>%1 of paint on %2: %3 wet, %4 dry.</source>
            <translation>%1 de peinture sur %2 : %3 mouillé, %4 sec.</translation>
        </message>
        <message numerus="yes">
            <source>From your own pours: %n so far, which took %1 times what was planned (%2 to %3).</source>
            <translation>
                <numerusform>D’après vos coulées : %n jusqu’ici, qui a pris %1 fois ce qui était prévu (%2 à %3).</numerusform>
                <numerusform>D’après vos coulées : %n jusqu’ici, qui ont pris %1 fois ce qui était prévu (%2 à %3).</numerusform>
            </translation>
        </message>
        <message>
            <source>Your own amounts for this technique.</source>
            <translation>Vos propres quantités pour cette technique.</translation>
        </message>
        <message>
            <source>Our guess to begin with; change it as you know better.</source>
            <translation>Notre estimation pour commencer ; changez-la si vous savez mieux.</translation>
        </message>
        <message numerus="yes">
            <source>Too few pours to tell how much yours take: %n of three.</source>
            <translation>
                <numerusform>Trop peu de coulées pour dire ce que prennent les vôtres : %n sur trois.</numerusform>
                <numerusform>Trop peu de coulées pour dire ce que prennent les vôtres : %n sur trois.</numerusform>
            </translation>
        </message>
        <message>
            <source>The film stays while you tilt.</source>
            <translation>Le film reste pendant l’inclinaison.</translation>
        </message>
        <message>
            <source>While you tilt, %1 to %2 of it run off: the more, the thinner the paint.</source>
            <translation>Pendant l’inclinaison, %1 à %2 s’écoulent : d’autant plus que la peinture est fluide.</translation>
        </message>
        <message>
            <source>Too much: more than half of it runs off a tilted canvas.</source>
            <translation>Trop : plus de la moitié s’écoule d’une toile inclinée.</translation>
        </message>
        <message>
            <source>%1 of %2 (%3)</source>
            <translation>%1 de %2 (%3)</translation>
        </message>
        <message>
            <source>paint</source>
            <translation>peinture</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>médium</translation>
        </message>
        <message>
            <source>flow additive</source>
            <translation>additif d’écoulement</translation>
        </message>
        <message>
            <source>%1 from the shelf</source>
            <translation>%1 de l’étagère</translation>
        </message>
        <message>
            <source>keep %1 back unthinned</source>
            <translation>garder %1 non dilué</translation>
        </message>
        <message>
            <source>Make %1: %2 of base (%3) and %4 of varnish (%5).</source>
            <translation>Faites %1 : %2 de base (%3) et %4 de vernis (%5).</translation>
        </message>
        <message>
            <source>%1 more come from the shelf.</source>
            <translation>%1 de plus viennent de l’étagère.</translation>
        </message>
        <message>
            <source>Fold it, strain it, let it rest, and test it once like a cup.</source>
            <translation>Incorporez, filtrez, laissez reposer et testez-le une fois comme un gobelet.</translation>
        </message>
        <message>
            <source>buy %1</source>
            <translation>acheter %1</translation>
        </message>
        <message>
            <source>enough</source>
            <translation>suffit</translation>
        </message>
        <message numerus="yes">
            <source>buy %n container(s) for %1</source>
            <translation>
                <numerusform>acheter %n contenant pour %1</numerusform>
                <numerusform>acheter %n contenants pour %1</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>A picture costs %1 in paint.</source>
            <translation>Un tableau coûte %1 de peinture.</translation>
        </message>
        <message>
            <source>What a picture costs is known once every supply has a container and a price.</source>
            <translation>Le coût d’un tableau sera connu quand tout aura un contenant et un prix.</translation>
        </message>
        <message>
            <source>keeps until %1</source>
            <translation>se garde jusqu’au %1</translation>
        </message>
        <message>
            <source>use it first, by %1</source>
            <translation>à utiliser d’abord, avant le %1</translation>
        </message>
        <message>
            <source>overdue: smell, strain and test it, or throw it away</source>
            <translation>dépassé : sentez, filtrez et testez, ou jetez</translation>
        </message>
        <message>
            <source>This cup holds only %1: take a larger one, or make it in turns.</source>
            <translation>Ce gobelet ne contient que %1 : prenez-en un plus grand ou faites-le en plusieurs fois.</translation>
        </message>
        <message>
            <source>In this cup: base up to %1 %3, then varnish up to %2 %3, measured inside from the bottom.</source>
            <translation>Dans ce gobelet : base jusqu’à %1 %3, puis vernis jusqu’à %2 %3, mesuré à l’intérieur depuis le fond.</translation>
        </message>
        <message>
            <source>Bubbles of %1 need at least %2 to %3 minutes to rise, the thicker the longer; small ones hours.</source>
            <translation>Des bulles de %1 mettent au moins %2 à %3 minutes à monter, d’autant plus que c’est épais ; les petites, des heures.</translation>
        </message>
        <message>
            <source>%1 (%2): %3, %4</source>
            <translation>%1 (%2) : %3, %4</translation>
        </message>
        <message>
            <source>By its own flow a usual cup, %1 of it medium, starts %2 times as thick as with the last batch (%3 to %4).</source>
            <translation>Par son propre écoulement, un gobelet usuel, à %1 de médium, commence %2 fois aussi épais qu’avec le lot précédent (%3 à %4).</translation>
        </message>
    </context>
    <context>
        <name>flowkin::PrintRoom</name>
        <message numerus="yes">
            <source>%n photo(s) could not be read and are left out.</source>
            <translation>
                <numerusform>%n photo n’a pas pu être lue et manque.</numerusform>
                <numerusform>%n photos n’ont pas pu être lues et manquent.</numerusform>
            </translation>
        </message>
        <message>
            <source>The printer does not take the pages; save them as a file and open it.</source>
            <translation>L’imprimante n’accepte pas les pages ; les enregistrer dans un fichier et l’ouvrir.</translation>
        </message>
        <message>
            <source>No printer is set up on this computer; save the pages as a file and print it elsewhere.</source>
            <translation>Aucune imprimante n’est installée sur cet ordinateur ; enregistrer les pages dans un fichier et l’imprimer ailleurs.</translation>
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
            <source>On the bench, the bar between two ends shows what the film allows, the bead above it the best guess, the gate in the middle a match. This cup lies on the thick side. The first addition is small on purpose: water cannot be taken out again.</source>
            <translation>Sur l’établi, la barre entre deux bouts montre ce que le film permet, la perle au-dessus la meilleure estimation, la porte au milieu l’accord. Ce gobelet est du côté épais. Le premier ajout est petit exprès : l’eau ne se retire plus.</translation>
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
    <context>
        <name>page</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 à %3)</translation>
        </message>
        <message>
            <source>water %1</source>
            <translation>eau %1</translation>
        </message>
        <message>
            <source>flow %1</source>
            <translation>écoul. %1</translation>
        </message>
        <message>
            <source>to the base coat of %1</source>
            <translation>face à la couche de base du %1</translation>
        </message>
        <message>
            <source>at %1</source>
            <translation>à %1</translation>
        </message>
        <message>
            <source>mixed %1.</source>
            <translation>mélangé %1.</translation>
        </message>
        <message>
            <source>%1 (activator)</source>
            <translation>%1 (activateur)</translation>
        </message>
        <message>
            <source>cup</source>
            <translation>gobelet</translation>
        </message>
        <message>
            <source>paint</source>
            <translation>peinture</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>médium</translation>
        </message>
        <message>
            <source>additive</source>
            <translation>additif</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>mélange</translation>
        </message>
        <message>
            <source>keep back</source>
            <translation>garder</translation>
        </message>
        <message>
            <source>Make %1 of medium: %2 (%3) of base and %4 (%5) of varnish. Fold it, strain it, let it rest.</source>
            <translation>Faire %1 de médium : %2 (%3) de base et %4 (%5) de vernis. Mélanger doucement, filtrer, laisser reposer.</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Attention</translation>
        </message>
        <message>
            <source>%1: flow against the base coat, test by test</source>
            <translation>%1 : écoulement face à la couche de base, test par test</translation>
        </message>
        <message>
            <source>%1 added</source>
            <translation>%1 ajoutés</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Étiquettes</translation>
        </message>
        <message>
            <source>Bench sheet</source>
            <translation>Feuille d’établi</translation>
        </message>
        <message>
            <source>Bench sheet: %1</source>
            <translation>Feuille d’établi : %1</translation>
        </message>
        <message>
            <source>Pictures: %1; %2 painted, %3 on the canvas, %4 wet, %5 dry.</source>
            <translation>Tableaux : %1 ; %2 peints, %3 sur la toile, %4 mouillé, %5 sec.</translation>
        </message>
        <message>
            <source>First mixes</source>
            <translation>Premiers mélanges</translation>
        </message>
        <message>
            <source>At the bench</source>
            <translation>À l’établi</translation>
        </message>
        <message>
            <source>water</source>
            <translation>eau</translation>
        </message>
        <message>
            <source>match, time</source>
            <translation>accord, heure</translation>
        </message>
        <message>
            <source>Room ______ %1   humidity ______ %   rested ______ min   strained yes / no   date ____________</source>
            <translation>Pièce ______ %1   humidité ______ %   repos ______ min   filtré oui / non   date ____________</translation>
        </message>
        <message>
            <source>To have ready</source>
            <translation>À préparer</translation>
        </message>
        <message>
            <source>what</source>
            <translation>quoi</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>volume</translation>
        </message>
        <message>
            <source>weight</source>
            <translation>poids</translation>
        </message>
        <message>
            <source>to buy</source>
            <translation>à acheter</translation>
        </message>
        <message>
            <source>Class</source>
            <translation>Cours</translation>
        </message>
        <message>
            <source>Class: %1</source>
            <translation>Cours : %1</translation>
        </message>
        <message>
            <source>Places: %1, one base coat for all; %2.</source>
            <translation>Places : %1, une couche de base pour tous ; %2.</translation>
        </message>
        <message>
            <source>The whole batch</source>
            <translation>Le tout</translation>
        </message>
        <message>
            <source>At each place</source>
            <translation>À chaque place</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Étapes</translation>
        </message>
        <message>
            <source>Cover the table; tape the back of the canvas; set it on cups and level it.</source>
            <translation>Couvrir la table ; protéger le dos de la toile ; la poser sur des gobelets, de niveau.</translation>
        </message>
        <message>
            <source>Stir your cups slowly. Lift the stick and compare with the base coat: does it run as fast?</source>
            <translation>Remuer lentement les gobelets. Lever le bâtonnet et comparer à la couche de base : coule-t-elle aussi vite ?</translation>
        </message>
        <message>
            <source>Slower: ask before adding water; then a few drops, stir, compare again. Faster: stir in some of what was kept back.</source>
            <translation>Plus lent : demander avant d’ajouter de l’eau ; puis quelques gouttes, remuer, comparer encore. Plus vite : remettre un peu de ce qui fut gardé.</translation>
        </message>
        <message>
            <source>As fast as the base coat: stop. Write down the drops.</source>
            <translation>Aussi vite que la couche de base : arrêter. Noter les gouttes.</translation>
        </message>
        <message>
            <source>Lay the wet base, pour, tilt slowly to all corners.</source>
            <translation>Poser le fond mouillé, verser, incliner lentement vers tous les coins.</translation>
        </message>
        <message>
            <source>Photograph it wet. Leave it level, covered, without draught.</source>
            <translation>Photographier mouillé. Laisser à plat, couvert, sans courant d’air.</translation>
        </message>
        <message>
            <source>Your cups</source>
            <translation>Vos gobelets</translation>
        </message>
        <message>
            <source>slower / as fast / faster</source>
            <translation>plus lent / égal / plus vite</translation>
        </message>
        <message>
            <source>drops added</source>
            <translation>gouttes ajoutées</translation>
        </message>
        <message>
            <source>as fast now?</source>
            <translation>aussi vite ?</translation>
        </message>
        <message>
            <source>room %1</source>
            <translation>pièce %1</translation>
        </message>
        <message>
            <source>%1 humidity</source>
            <translation>%1 d’humidité</translation>
        </message>
        <message>
            <source>judged %1</source>
            <translation>jugé %1</translation>
        </message>
        <message>
            <source>Cups</source>
            <translation>Gobelets</translation>
        </message>
        <message>
            <source>1 (reference)</source>
            <translation>1 (référence)</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>non mesuré</translation>
        </message>
        <message>
            <source>%1, before the last addition</source>
            <translation>%1, avant le dernier ajout</translation>
        </message>
        <message>
            <source>flow to the base coat (95 %)</source>
            <translation>écoulement / couche de base (95 %)</translation>
        </message>
        <message>
            <source>target</source>
            <translation>visé</translation>
        </message>
        <message>
            <source>added</source>
            <translation>ajouté</translation>
        </message>
        <message>
            <source>Pour</source>
            <translation>Coulage</translation>
        </message>
        <message>
            <source>planned %1</source>
            <translation>prévu %1</translation>
        </message>
        <message>
            <source>used %1</source>
            <translation>utilisé %1</translation>
        </message>
        <message>
            <source>%1 wet</source>
            <translation>%1 mouillé</translation>
        </message>
        <message>
            <source>%1 dry</source>
            <translation>%1 sec</translation>
        </message>
        <message>
            <source>Cell tests</source>
            <translation>Tests de cellules</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>vu</translation>
        </message>
        <message>
            <source>after</source>
            <translation>après</translation>
        </message>
        <message>
            <source>paint : additive</source>
            <translation>peinture : additif</translation>
        </message>
        <message>
            <source>flow</source>
            <translation>écoul.</translation>
        </message>
        <message>
            <source>remark</source>
            <translation>remarque</translation>
        </message>
        <message>
            <source>Seen on it</source>
            <translation>Vu dessus</translation>
        </message>
        <message>
            <source>Causes are those commonly named, held against what was measured that day; none is proven by it.</source>
            <translation>Causes communément citées, comparées à ce qui fut mesuré ce jour-là ; aucune n’en est prouvée.</translation>
        </message>
        <message>
            <source>fault</source>
            <translation>défaut</translation>
        </message>
        <message>
            <source>cause</source>
            <translation>cause</translation>
        </message>
        <message>
            <source>that day</source>
            <translation>ce jour-là</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>mesuré</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notes</translation>
        </message>
        <message>
            <source>cell test, %1</source>
            <translation>test de cellules, %1</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 mL</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1 : %2</translation>
        </message>
        <message>
            <source>%1 on a cm², half larger than %2 mm</source>
            <translation>%1 par cm², la moitié plus grandes que %2 mm</translation>
        </message>
    </context>
</TS>
