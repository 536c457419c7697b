import type { PacketWords } from './words.js';

/** Cautions of a packet in German. */
export const GERMAN_CAUTIONS: PacketWords['cautions'] = {
  columns: { where: 'wo', what: 'was verletzen kann, und was zu tun ist (Quelle)' },
  all: {
    edges: {
      where: 'Schnittkanten',
      text: 'Geschnittene Kanten und Grate schneiden wie Messer. Blech mit Handschuhen und hochkant tragen; jede Kante und jedes Loch entgraten, bevor es weitergeht.',
      source: 'Kanten wie in ISO 13715, aus dem Gedächtnis',
    },
    'burr-rotating': {
      where: 'Bohren',
      text: 'Keine Handschuhe, weiten Ärmel, Ringe oder offenen Haare an Bohrer und anderen drehenden Werkzeugen. Blech festspannen: dünnes Blech reißt mit, wenn der Bohrer durchbricht.',
      source: 'Fachseiten; 29 CFR 1910.138, aus dem Gedächtnis',
    },
    eyes: {
      where: 'Augen und Ohren',
      text: 'Schutzbrille nach EN 166 oder ANSI Z87.1 beim Schneiden, Bohren, Hämmern und wenn Nietdorne reißen; Gehörschutz beim Hämmern.',
      source: '29 CFR 1910.133, aus dem Gedächtnis',
    },
    shear: {
      where: 'Schere',
      text: 'Finger hinter dem Schutz und weg von Messer und Niederhalter; nur eine Person bedient die Schere; Füße weg von dem, was fällt.',
      source: '29 CFR 1910.212, aus dem Gedächtnis; Anleitung der Schere',
    },
    'leaf-brake': {
      where: 'Abkantbank',
      text: 'Oberwange und Biegewange quetschen. Hände von der Biegelinie, bevor die Oberwange schließt, alle weg von Biegewange und Gegengewichten; eine große Tafel schlägt beim Biegen hoch: seitlich stehen.',
      source: 'aus dem Gedächtnis; Anleitung der Abkantbank',
    },
    'press-brake': {
      where: 'Abkantpresse',
      text: 'Hände bleiben aus dem Arbeitsbereich. Ein Abstand von 100 mm (4 in) genügt nur, wo sich nichts abschirmen lässt, und nur Geschulten. Das Blech schlägt hoch; der Anschlag quetscht.',
      source: 'OSHA CPL 02-01-025, 29 CFR 1910.212',
    },
    vise: {
      where: 'Schraubstock und Hammer',
      text: 'Mit dem Gummi- oder Holzhammer auf eine Leiste oder einen Klotz schlagen, nie auf die Kante; Finger nicht zwischen Blech und Backe.',
      source: 'aus dem Gedächtnis',
    },
    'resistance-weld': {
      where: 'Punktschweißen',
      text: 'Nur für daran Geschulte. Finger nie zwischen die Elektroden; Schutz oder Zweihandschaltung, wo sie hinkönnten; Fußschalter abgedeckt; Funken abschirmen, Augen und Arme bedecken.',
      source: '29 CFR 1910.255(a)(3), (b)(4) bis (b)(6)',
    },
    implants: {
      where: 'Punktschweißen',
      text: 'Menschen mit Herzschrittmacher oder ähnlichem Implantat bleiben fern: das Magnetfeld kann es stören.',
      source: 'ANSI Z49.1, Richtlinie 2013/35/EU, aus dem Gedächtnis',
    },
    arc: {
      where: 'Lichtbogen',
      text: 'Der Lichtbogen verbrennt Augen und Haut: Schweißhelm mit der richtigen Stufe, Haut bedeckt, Schirme für alle anderen. Nur für Geschulte.',
      source: 'ANSI Z49.1, aus dem Gedächtnis',
    },
    fire: {
      where: 'heiße Arbeit',
      text: 'Brennbares im Umkreis von 11 m (35 ft) wegräumen oder abdecken, Löscher bereithalten und danach mindestens 30 Minuten wachen (NFPA 51B verlangt 60). Geschweißtes bleibt heiß.',
      source: '29 CFR 1910.252(a)(2)(iii)(B), (vii), aus zweiter Hand; NFPA 51B aus dem Gedächtnis',
    },
    air: {
      where: 'Schweißrauch',
      text: 'Lüften: Absaugung am Werkstück, oder 57 m³/min (2000 ft³/min) Luft für jede schweißende Person, wenn der Raum klein (unter 283 m³ für jede), niedrig (unter 4,9 m) oder geschlossen ist.',
      source: '29 CFR 1910.252(c)(2), (c)(3)',
    },
    zinc: {
      where: 'verzinktes Blech',
      text: 'Heißes Zink gibt Rauch ab, der krank macht wie eine Grippe (Grenze 5 mg/m³). Zink an der Schweißstelle entfernen oder am Werkstück absaugen; Datenblätter von Blech und Zusatz beachten.',
      source: '29 CFR 1910.1000, 1910.252, aus zweiter Hand',
    },
    chromium: {
      where: 'nichtrostender Stahl',
      text: 'Schweißen und Brennschneiden von nichtrostendem Stahl macht sechswertiges Chrom: am Werkstück absaugen, Datenblätter von Blech und Zusatz beachten.',
      source: '29 CFR 1910.1026',
    },
    table: {
      where: 'Schneidtisch',
      text: 'Laser: Gehäuse zu, Verriegelung in Ordnung, richtige Brille. Plasma: dunkle Brille, Absaugung; kein Aluminium über Wasser, das Wasserstoff gibt. Nur für Geschulte.',
      source: 'ANSI Z136, IEC 60825-1, aus dem Gedächtnis',
    },
    mandrels: {
      where: 'Niete',
      text: 'Nietdorne reißen ab und fliegen: Augen schützen, Dorne auffangen oder aufkehren. Sie sind spitz.',
      source: '29 CFR 1910.133, aus dem Gedächtnis',
    },
    object: {
      where: 'fertiges Stück',
      text: 'Ecken bleiben scharf, auch wenn die Kanten umgeschlagen sind: runden und entgraten, was Hände, Kleider oder Kinder erreichen. Mit beiden Händen und geradem Rücken heben.',
      source: 'scharfe Kanten wie in UL 1439, aus dem Gedächtnis',
    },
    food: {
      where: 'Lebensmittel',
      text: 'Wenn Essbares darin liegen oder wachsen soll: kein bleihaltiges Lot oder Flussmittel (höchstens 0,2 % Blei), Öl abwaschen, auskleiden, wo Blech oder Überzug nicht für Lebensmittel gemacht sind.',
      source: 'FDA Food Code 4-101.13(C); 21 CFR 189.240',
    },
    'food-zinc': {
      where: 'Lebensmittel und Zink',
      text: 'Verzinktes Blech darf saure Lebensmittel nicht berühren (Obst, Tomaten, Essig, Sauerkraut): sie lösen Zink.',
      source: 'FDA Food Code 4-101.15',
    },
    pupils: {
      where: 'Schule',
      text: 'Unter Aufsicht, und nachdem die Lehrkraft die Maschine gezeigt hat; die Regeln der Schule gehen vor.',
      source: 'BS 4163, aus dem Gedächtnis',
    },
    rules: {
      where: 'immer',
      text: 'Anleitungen der Maschinen, Regeln von Schule oder Werkstatt und örtliche Vorschriften befolgen. Geschulte oder befugte Leute holen, wo sie verlangt sind.',
      source: 'übliche Praxis, ohne Quelle',
    },
  },
  load: {
    question: 'Wie viel trägt es?',
    answer:
      'Das wird hier nicht beantwortet. Was Blecharbeit trägt, hängt davon ab, wie die Schweißpunkte oder Niete wirklich geworden sind, wie das Blech wirklich ist, wie die Last liegt und schwingt, und von Abnutzung und Rost; nichts davon steht in einer Zeichnung. Zum Heben, für Lasten über Menschen, für Fahrzeuge, Druck oder Hitze muss eine sachkundige Person das fertige Stück prüfen (in Großbritannien LOLER 1998, in den USA ASME B30.20; aus dem Gedächtnis). Keine Tragfähigkeit.',
  },
  findings: 'Was man über diesen Auftrag vor dem Schneiden wissen sollte',
  findingColumns: { part: 'Teil', what: 'was', fix: 'was tun' },
};
