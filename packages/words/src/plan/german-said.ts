/** What families and materials say of themselves, in German, by what they say in English. */
export const GERMAN_SAID: Readonly<Record<string, string>> = {
  'bracket with holes': 'Winkel mit Löchern',
  'angle (one bend), z (two, the second back) or u (two the same way)':
    'angle (eine Kantung), z (zwei, die zweite zurück) oder u (zwei in derselben Richtung)',
  'outside leg that lies flat, from its free end to the first bend':
    'äußerer Schenkel, der flach liegt, vom freien Ende bis zur ersten Kantung',
  'outside leg between the bends of a z or a u': 'äußerer Schenkel zwischen den Kantungen eines Z oder U',
  'outside leg that ends the bracket': 'äußerer Schenkel am Ende des Winkels',
  'every bend, bent through from flat': 'jede Kantung, von flach an gemessen',
  'holes in a row across the base and the last leg; leave out for none':
    'Löcher in einer Reihe quer über Grund und letzten Schenkel; weglassen für keine',
  'of each hole': 'jedes Lochs',
  'in each leg': 'in jedem Schenkel',
  'from the free end of a leg to the middle of its holes':
    'vom freien Ende eines Schenkels bis zur Mitte seiner Löcher',
  'from the sides to the middle of the first and the last; evenly spread when left out':
    'von den Seiten bis zur Mitte des ersten und des letzten; gleichmäßig verteilt, wenn weggelassen',
  'channel with hemmed sides': 'Kanal mit umgeschlagenen Seiten',
  'between the outside faces of the folded end tabs': 'zwischen den Außenseiten der gekanteten Endlaschen',
  'over the outside faces of the sides': 'über die Außenseiten der Seiten',
  'of the sides, over the hem': 'der Seiten, über den Umschlag',
  'hem along the rim of both sides, folded in; leave out for none':
    'Umschlag am Rand beider Seiten, nach innen; weglassen für keinen',
  'closed, open, teardrop or none': 'geschlossen, offen, tropfenförmig oder keiner',
  'finished width of the hem': 'fertige Breite des Umschlags',
  'inside gap of an open hem, inside width of a teardrop':
    'lichter Spalt eines offenen Umschlags, lichte Weite eines tropfenförmigen',
  'tabs at both ends; leave out for open ends': 'Laschen an beiden Enden; weglassen für offene Enden',
  'outside length of the tabs': 'Außenlänge der Laschen',
  'which panels carry tabs: base, north, south': 'Flächen mit Laschen: base, north, south',
  'slant (45° or the mitre between tabs), square, or relief (slant with a round hole at the root)':
    'schräg (45° oder die Gehrung zwischen Laschen), rechtwinklig oder mit Freibohrung im Grund',
  'kept between neighbouring tabs': 'zwischen benachbarten Laschen frei',
  'thickness of what will stand against the tabs; one sheet when left out':
    'Dicke dessen, was an den Laschen anliegt; eine Blechdicke, wenn weggelassen',
  'end with a gusset crown': 'Stirnblech mit schrägen Schultern',
  'over the straight sides': 'über die geraden Seiten',
  'from the lower edge to where the slopes start': 'von der Unterkante bis zum Beginn der Schrägen',
  'from the lower edge to the crown': 'von der Unterkante bis zur Oberkante',
  'of the flat top': 'der geraden Oberkante',
  'leg of the 45° cut at the lower corners: auto clears the inside radius, 0 for none':
    'Schenkel des 45°-Schnitts an den unteren Ecken',
  'end with tabs of its own': 'Stirnblech mit eigenen Laschen',
  'over the outside faces of the side tabs': 'über die Außenseiten der Seitenlaschen',
  'from the lower edge to where the slopes start; the side tabs are as high':
    'von der Unterkante bis zum Beginn der Schrägen; so hoch sind die Seitenlaschen',
  'tabs along the foot and the sides': 'Laschen am Fuß und an den Seiten',
  'hole for a round bar; leave out for none': 'Loch für eine runde Stange; weglassen für keines',
  'of the hole': 'des Lochs',
  'from the crown to the middle of the hole': 'von der Oberkante bis zur Lochmitte',
  handle: 'Griff',
  'over the outside faces of the folded tabs': 'über die Außenseiten der gekanteten Laschen',
  'hem along the edge of both sides, folded in; leave out for none':
    'Umschlag an der Kante beider Seiten, nach innen; weglassen für keinen',
  'tabs at both ends, folded down': 'Laschen an beiden Enden, nach unten gekantet',
  'kept between the tabs and the sides at the corners': 'zwischen Laschen und Seiten an den Ecken frei',
  'box open at the top': 'oben offener Kasten',
  'between the west and east walls, outside or inside as `dimensions` says':
    'zwischen der West- und der Ostwand, außen oder innen, je nach `dimensions`',
  'between the south and north walls': 'zwischen der Süd- und der Nordwand',
  'of all walls, over what is folded at the rim': 'aller Wände, über das am Rand Gekantete',
  'walls that differ: north, south, east, west': 'Wände, die abweichen: north, south, east, west',
  'height of the north wall': 'Höhe der Nordwand',
  'height of the south wall': 'Höhe der Südwand',
  'height of the east wall': 'Höhe der Ostwand',
  'height of the west wall': 'Höhe der Westwand',
  'outside or inside: how length, width and heights are meant':
    'außen oder innen: wie Länge, Breite und Höhen gemeint sind',
  'open (square notch), lap (north and south walls cover the ends of the others), tabbed (tabs behind the west and east walls)':
    'offen (rechtwinklig ausgeklinkt), überlappt (Nord- und Südwand decken die Enden der anderen), mit Laschen (hinter West- und Ostwand)',
  'corner tabs of a tabbed box': 'Ecklaschen eines Kastens mit Laschen',
  'outside length of the corner tabs': 'Außenlänge der Ecklaschen',
  'hem on every rim, folded in: type, length, gap': 'Umschlag an jedem Rand, nach innen: Art, Länge, Spalt',
  'a hem for each wall on its own; walls left out have none':
    'ein Umschlag für jede Wand; weggelassene Wände haben keinen',
  'flange folded in at the rim of every wall; hems then sit on its edge':
    'Bord am Rand jeder Wand, nach innen; Umschläge sitzen dann an dessen Kante',
  'none, hole or slot at the root of the corners': 'nichts, Loch oder Schlitz im Grund der Ecken',
  'kept between neighbours at the corners': 'zwischen Nachbarn an den Ecken frei',
  'tray with a returned rim': 'Schale mit eingezogenem Rand',
  'of the walls, over the returns': 'der Wände, über die Borde',
  'outside or inside: how length, width and height are meant':
    'außen oder innen: wie Länge, Breite und Höhe gemeint sind',
  'what is folded in at the rim of every wall': 'was am Rand jeder Wand nach innen gekantet ist',
  'width of the return, from the outside of the wall': 'Breite des Bords, von der Außenseite der Wand',
  'depth of a lip turned down at the edge of the return; leave out for none':
    'Tiefe einer Lippe, an der Kante des Bords nach unten gekantet; weglassen für keine',
  'open (square notch) or tabbed (tabs of the north and south walls behind the other two)':
    'offen (rechtwinklig ausgeklinkt) oder mit Laschen (der Nord- und Südwand hinter den anderen)',
  'corner tabs of a tabbed tray': 'Ecklaschen einer Schale mit Laschen',
  'places at the four corners for angles that hold the tray above; leave out for none':
    'Plätze an den vier Ecken für Winkel, die die Schale darüber halten; weglassen für keine',
  'how far the angles stand over the rim': 'wie weit die Winkel über den Rand stehen',
  'kept between the angles of trays that stand on each other':
    'zwischen den Winkeln aufeinander stehender Schalen frei',
  'lid with a skirt': 'Deckel mit Zarge',
  'of what it covers, outside; of the opening it drops into, inside':
    'dessen, was er deckt, außen; der Öffnung, in die er fällt, innen',
  'from the top of the plate to the edge of the skirt':
    'von der Oberseite der Platte bis zur Kante der Zarge',
  'over (the skirt outside of the box) or inside (the skirt in the opening, the plate on its rim)':
    'darüber (Zarge außen um den Kasten) oder darin (Zarge in der Öffnung, Platte auf dem Rand)',
  'play between skirt and box on every side: auto clears the inside of the bend and the hem':
    'Spiel zwischen Zarge und Kasten auf jeder Seite',
  'hem on the edge of the skirt, folded in; leave out for none':
    'Umschlag an der Kante der Zarge, nach innen; weglassen für keinen',
  'how far the plate of a lid that drops in reaches past its skirt':
    'wie weit die Platte eines Deckels, der hineinfällt, über die Zarge steht',
  'of a lid that goes over: open, or lap (north and south skirts cover the ends of the others)':
    'eines Deckels, der darüber geht: offen oder überlappt (Nord- und Südzarge decken die Enden der anderen)',
  'divider for a box': 'Trennwand für einen Kasten',
  'over the outside faces of the tabs, or from end to end':
    'über die Außenseiten der Laschen, oder von Ende zu Ende',
  'of the plate': 'der Platte',
  'tabs at both ends; leave out for none': 'Laschen an beiden Enden; weglassen für keine',
  'slots for dividers that cross; leave out for none':
    'Schlitze für kreuzende Trennwände; weglassen für keine',
  'middle of each slot, from the west end, in order': 'Mitte jedes Schlitzes vom Westende, der Reihe nach',
  'top or bottom: the edge they are cut from; what crosses has the other':
    'oben oder unten: die Kante, von der sie geschnitten sind; was kreuzt, hat die andere',
  'thickness of what crosses; one sheet when left out':
    'Dicke dessen, was kreuzt; eine Blechdicke, wenn weggelassen',
  'play across a slot and below it': 'Spiel quer im Schlitz und darunter',
  'how far the lower corners give way: auto clears the inside radius of the box, 0 for none':
    'wie weit die unteren Ecken zurückstehen',
  'pan with walls that lean out': 'Wanne mit schrägen Wänden',
  'of the bottom, between the lines where the outside faces of walls and bottom meet':
    'des Bodens, zwischen den Linien, in denen sich die Außenseiten von Wänden und Boden treffen',
  'of the bottom, along x': 'des Bodens, entlang x',
  'of the bottom, along y': 'des Bodens, entlang y',
  'from under the bottom to the top of the finished rim':
    'von der Unterseite des Bodens bis zur Oberkante des fertigen Randes',
  'how far each wall leans out over the depth; 0 for upright walls':
    'wie weit jede Wand über die Tiefe nach außen steht; 0 für senkrechte Wände',
  'rim: plain, hem (folded in) or wire (rolled outwards)':
    'Rand: glatt, Umschlag (nach innen) oder Draht (nach außen gerollt)',
  'plain, hem or wire': 'glatt, Umschlag oder Draht',
  'diameter of the wire': 'Durchmesser des Drahts',
  'flat metal the roll takes; 2.5 wire diameters when left out':
    'Blech, das die Rolle braucht; 2,5 Drahtdurchmesser, wenn weggelassen',
  'mitred, or folded (tabs of the north and south walls inside the other two)':
    'auf Gehrung oder gefaltet (Laschen der Nord- und Südwand innen an den anderen)',
  'corner tabs of folded corners': 'Ecklaschen gefalteter Ecken',
  'strip with parallel bends': 'Streifen mit parallelen Kantungen',
  'along the bends': 'entlang der Kantungen',
  'outside legs in order, one more than there are bends; over 90° to the outer tangent':
    'Außenschenkel der Reihe nach, einer mehr als Kantungen; über 90° bis zur äußeren Tangente',
  'bent through from flat, positive up, -180 to 180':
    'aus der Ebene gebogen, positiv nach oben, -180 bis 180',
  "one for all bends, or one each; the sheet's when left out":
    'einer für alle Kantungen oder je einer; der des Blechs, wenn weggelassen',
  'cold-rolled mild steel DC01': 'kaltgewalzter Stahl DC01',
  'hot-dip galvanised steel DX51D+Z': 'feuerverzinkter Stahl DX51D+Z',
  'stainless steel 304 (1.4301)': 'nichtrostender Stahl 304 (1.4301)',
  'stainless steel 430 (1.4016)': 'nichtrostender Stahl 430 (1.4016)',
  'aluminium 1050A-H14': 'Aluminium 1050A-H14',
  'aluminium 3003-H14': 'Aluminium 3003-H14',
  'aluminium 5052-H32': 'Aluminium 5052-H32',
  'aluminium 6061-T6': 'Aluminium 6061-T6',
  'copper Cu-DHP R220': 'Kupfer Cu-DHP R220',
  'brass CuZn37 R300': 'Messing CuZn37 R300',
  'tinplate T2/T3': 'Weißblech T2/T3',
};
