import type { JointFacts, PacketWords } from './words.js';

const pairs = (joints: readonly JointFacts[]) =>
  joints
    .map((j) =>
      j.from === j.to ? `${j.from}, die eigenen Ränder (${j.joint})` : `${j.to} an ${j.from} (${j.joint})`,
    )
    .join(', ');
const names = (joints: readonly JointFacts[]) => joints.map((j) => j.joint).join(', ');

/** Name, its plural, and the word before the first and the other ones. */
const FASTENERS: Readonly<Record<string, { one: string; more: string; first: string; a: string }>> = {
  'spot-weld': { one: 'Schweißpunkt', more: 'Schweißpunkte', first: 'Erster', a: 'einen' },
  'plug-weld': { one: 'Lochschweißung', more: 'Lochschweißungen', first: 'Erste', a: 'eine' },
  'blind-rivet': { one: 'Niet', more: 'Niete', first: 'Erster', a: 'einen' },
  screw: { one: 'Schraube', more: 'Schrauben', first: 'Erste', a: 'eine' },
};
const fastenerOf = (kind: string) =>
  FASTENERS[kind] ?? { one: kind, more: kind, first: 'Erste Verbindung:', a: 'eine' };

const TRIAL_JOINTS: Readonly<Record<string, readonly string[]>> = {
  'spot-weld': [
    'Zwei Streifen vom selben Blech blank machen: kein Öl, keine Farbe, kein Zunder. Mit einem Punkt schweißen und im Schraubstock auseinanderschälen.',
    'Der Punkt ist gut, wenn er einen Butzen aus einem Streifen reißt. Löst er sich zwischen den Blechen, ist die Einstellung zu schwach: Zeit oder Strom nach der Anleitung des Geräts ändern und noch einmal versuchen.',
  ],
  'plug-weld': [
    'Zwei Streifen vom selben Blech reinigen, das obere lochen, klemmen und durch das Loch schweißen; dann im Schraubstock zu schälen versuchen. Einstellung ändern, bis es hält und nicht durchbrennt.',
  ],
  'blind-rivet': [
    'Zwei Streifen vom selben Blech bohren, die Löcher beidseitig entgraten und einen Niet setzen. Der Kopf liegt flach, die Streifen liegen dicht, der Niet dreht sich nicht.',
  ],
  screw: [
    'Zwei Streifen vom selben Blech bohren und eine Schraube eindrehen. Sie zieht die Streifen dicht und überdreht nicht.',
  ],
};

/** What packets say in German. */
export const GERMAN_PACKET: PacketWords = {
  page: (n, of) => `Seite ${n} von ${of}`,
  packet: (job) => (job === '' ? 'Arbeitsmappe' : `${job}: Arbeitsmappe`),
  sections: {
    cover: 'Teile und Inhalt',
    cautions: 'Vorsicht: zuerst lesen',
    cuts: 'Zuschnittliste',
    plans: 'Pläne',
    operations: 'Arbeitsgänge',
    joints: 'Verbindungsplan',
    inspection: 'Prüfblatt',
    templates: 'Schablonen in wahrer Größe',
    worksheets: 'Arbeitsblätter',
    answers: 'Lösungen',
  },
  plan: (part) => `Plan von ${part}`,
  template: (part) => `Schablone von ${part}`,
  contents: 'Inhalt',
  contentsPage: 'Seite',
  cover: {
    picture: 'Was es wird',
    pictureAlt: (job, pieces) =>
      `${job === '' ? 'Das Stück' : job} zusammengesetzt, schräg von oben; Teile: ${pieces}`,
    partAlt: (part) => `${part} gebogen, schräg von oben`,
    parts: 'Teile',
    columns: {
      letter: '',
      part: 'Teil',
      what: 'was es ist',
      make: 'Stück',
      stock: 'Blech',
      blank: 'Zuschnitt',
      mass: 'je',
    },
    mass: (text) => `Zusammen ${text}, ohne Verbindungsmittel.`,
    sets: (count, has) =>
      `Für ${count} Sätze: die Stückzahlen in ${has('cuts') ? 'Teileliste und Zuschnittliste' : 'der Teileliste'} sind die aller Sätze.`,
    start: (has) =>
      [
        'Zuerst die Seite Vorsicht lesen.',
        ...(has('operations')
          ? [
              `Dann die Arbeitsgänge einen nach dem anderen tun und abhaken${has('plans') ? '; sie sagen, wann welcher Plan dran ist' : ''}.`,
            ]
          : []),
        ...(has('plans') ? ['Ein Plan ist zum Anreißen mit Maßstab und Winkel.'] : []),
        ...(has('templates')
          ? [
              `Eine Schablone ist ${has('plans') ? 'dasselbe' : 'eine Abwicklung'} in wahrer Größe zum Auflegen${has('plans') ? ' und kann ihn ersetzen' : ''}.`,
            ]
          : []),
        ...(has('worksheets')
          ? ['Ein Arbeitsblatt ist ein Plan, auf dem Maße fehlen: ausrechnen und eintragen.']
          : []),
      ].join(' '),
  },
  cautions: {
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
        text: 'Lüften: Absaugung am Werkstück, oder 57 m³/min (2000 ft³/min) Luft für jede schweißende Person, wenn der Raum klein (unter 283 m³ für jede), niedrig (unter 4.9 m) oder geschlossen ist.',
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
        text: 'Wenn Essbares darin liegen oder wachsen soll: kein bleihaltiges Lot oder Flussmittel (höchstens 0.2 % Blei), Öl abwaschen, auskleiden, wo Blech oder Überzug nicht für Lebensmittel gemacht sind.',
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
    severity: { error: 'Fehler', warning: 'Warnung', note: 'Hinweis' },
  },
  cuts: {
    heading: 'Zuschnitte',
    columns: {
      part: 'Teil',
      pieces: 'Stück',
      blank: 'Zuschnitt',
      diagonal: 'Diagonalen',
      stock: 'Blech',
      mass: 'je',
      done: 'fertig',
    },
    notes: [
      'Zuschnitte gleicher Breite in einem Streifen schneiden. Teile, für die vorher gemessen wird (siehe Arbeitsgänge), erst nach dem Messen schneiden.',
      'Ein Zuschnitt ist rechtwinklig, wenn beide Diagonalen so lang sind wie angegeben.',
    ],
    stock: 'Blech, ohne Verschnitt',
    stockColumns: { stock: 'Blech', pieces: 'Zuschnitte', area: 'Fläche', mass: 'Masse' },
  },
  operations: {
    shop: (name, assumed) =>
      assumed
        ? `Es wurde keine Werkstatt angegeben. Die Maschinen sind angenommen: ${name}. Zahlen für Segmente, Anschlag und Winkel sind die der angenommenen Abkantbank; wo die eigene anders ist, eigene suchen.`
        : `Für die Maschinen von ${name}.`,
    found: (parts) => `Biegefolge für diese Maschinen gefunden: ${parts}.`,
    usual: (parts) =>
      `Für ${parts} steht die übliche Biegefolge (Umschläge, dann innen vor außen, dann kurz vor lang; übliche Praxis, ohne Quelle). Keine Maschine wurde geprüft: das Teil erst aus Papier falten und sehen, ob nichts im Weg ist.`,
    impossible: (part, reasons) =>
      `Auf diesen Maschinen wurde für ${part} keine Biegefolge gefunden (auf Englisch: ${reasons}). Angegeben ist die übliche: jemanden mit einer tieferen Abkantbank fragen, oder im Schraubstock über eine Schiene biegen.`,
    tools: 'Bereitlegen',
    toolNames: {
      gloves: 'Handschuhe',
      eyes: 'Schutzbrille',
      rule: 'Stahlmaßstab',
      square: 'Anschlagwinkel',
      scriber: 'Reißnadel',
      pencil: 'Bleistift',
      'centre-punch': 'Körner',
      hammer: 'Hammer',
      shear: 'Tafelschere',
      snips: 'Handschere oder Ausklinker',
      file: 'Feile oder Entgrater',
      drill: 'Bohrmaschine mit Bohrern, Holzklotz',
      brake: 'Abkantbank',
      press: 'Abkantpresse',
      vise: 'Schraubstock mit Biegeschienen',
      mallet: 'Holz- oder Gummihammer',
      protractor: 'Winkelmesser oder Winkellehre',
      caliper: 'Messschieber',
      clamps: 'Zwingen',
      'spot-welder': 'Punktschweißgerät',
      welder: 'Schweißgerät',
      'rivet-gun': 'Nietzange und Niete',
      screwdriver: 'Schraubendreher und Schrauben',
    },
    reasons: {
      'metal-differs': 'kein Blech und keine Maschine gleicht der anderen; Abfall ist billiger als ein Teil',
      'all-from-edges': 'alles wird von zwei Kanten gemessen, also müssen sie gerade und rechtwinklig sein',
      'burrs-lift':
        'Grate schneiden, und mit ihnen liegt das Blech nicht flach an Maßstab, Tisch und Anschlag',
      'each-from-datum': 'von der letzten Linie gemessen, sammeln sich kleine Fehler',
      'scratch-cracks': 'ein Kratzer außen am Bug kann reißen',
      'flat-while-it-can': 'stehen die Wände, kommt die Schere nicht mehr hin',
      'walls-block-drill':
        'stehen die Wände, kommt der Bohrer vielleicht nicht mehr hin, und flaches Blech liegt fest auf',
      'match-drill': 'durch beide Teile gebohrte Löcher passen; zweimal angerissene selten',
      'hems-before-walls': 'ein Umschlag lässt sich nur zudrücken, solange das Blech daneben flach ist',
      'inner-before-outer': 'was an einer Wand hängt, wird gebogen, bevor die Wand im Weg steht',
      'short-before-long': 'kurze Wände passen zwischen die Segmente, lange gehen dann daran vorbei',
      'found-order': 'in dieser Folge passt jede Kantung noch in die Maschine',
      'correct-while-open': 'jetzt lässt es sich noch richten',
      'bends-vary':
        'Kantungen fallen auf jeder Maschine etwas anders aus; das nächste Teil wird nach dem gemacht, was da ist',
      'seat-square': 'was schief geklemmt ist, bleibt schief',
      'first-can-be-undone': 'ein Punkt lässt sich noch lösen; zwei halten, was falsch ist',
      'middle-outwards':
        'Wärme und Druck schieben das Blech vor sich her; von der Mitte aus kann es ausweichen',
      'holds-by-others': 'es wird von dem gehalten, was darum steht',
      'hands-and-cloth': 'es wird mit bloßen Händen getragen',
      'measured-is-known': 'was nicht gemessen ist, weiß man nicht',
    },
    why: (text) => `Warum: ${text}.`,
    with: (tools) => `Mit: ${tools}`,
    glossary:
      'Anlegelinie: was unter der Kante der Segmente liegt, um die gebogen wird. Anschlag: von dieser Kante bis zur Blechkante, die hinten anliegt. Rückstand: wie weit diese Kante hinter der Kante der Biegewange steht. Richtungen sind die des Bildes: das Blech, wie es zum Anreißen vor einem liegt. Auch Flächen heißen danach: West (west) ist links, Ost (east) rechts, Nord (north) fern, Süd (south) nah.',
    directions: {
      heading: 'Richtungen',
      alt: 'Das Blech, wie es vor einem liegt, Anrissseite oben: nahe Kante zum Körper, ferne Kante vom Körper weg, linke und rechte Kante; die Bezugsecke ist nah links',
      face: 'Anrissseite oben',
      datum: 'Bezugsecke',
      you: 'Standplatz',
      note: 'Sie gehören zum Blech und drehen sich mit ihm: „rechte Kante zum Körper“ meint diese rechte Kante.',
    },
    heading: 'In dieser Reihenfolge',
    picture: (part, step, of) => `Bild: ${part}, Schritt ${step} von ${of}.`,
    pictures: (part) => `Bilder zum Biegen von ${part}`,
    trialBend: ({ thickness, radius, length, width, deduction }, unit) => ({
      title: 'Probestreifen biegen',
      lines: [
        `Einen Streifen vom selben Blech (${thickness}) schneiden, genau ${length} ${unit} lang und etwa ${width} ${unit} breit. Die Mitte anreißen, dort auf 90° biegen, Innenradius ${radius} ${unit}, und beide Schenkel außen messen. Beide zusammen, weniger die Länge des Streifens, sind der Abzug.`,
        `${deduction === null ? 'Die Pläne nennen die erwarteten Abzüge.' : `Die Pläne erwarten ${deduction} ${unit}.`} Weicht er um mehr als ein Fünftel der Dicke ab, die Mappe neu drucken, mit K = ((2 × (R + T) – Abzug) × 0.637 – R) ÷ T; R ist der Innenradius, T die Dicke. Sonst weiter.`,
      ],
    }),
    shear: (part, quantity, x, y, diagonal, unit) => ({
      title: `${part}: ${quantity === 1 ? '1 Zuschnitt' : `${quantity} Zuschnitte`} schneiden`,
      lines: [
        `${x} × ${y} ${unit}. Erst eine lange Kante gerade schneiden, dann die anderen rechtwinklig dazu; rechtwinklig, wenn beide Diagonalen ${diagonal} sind.`,
      ],
    }),
    deburr: (part) => ({
      title: `${part}: entgraten`,
      lines: ['Alle vier Kanten auf beiden Seiten entgraten und das Blech sauber wischen.'],
    }),
    mark: (part, bent, noted) => ({
      title: `${part}: anreißen`,
      lines: [
        `Den Plan von ${part} nehmen. Das Blech hinlegen, wie die Abwicklung gezeichnet ist: Bezugsecke nah links. Die Seite, auf der angerissen wird, ist die Anrissseite; den Namen des Teils darauf schreiben.`,
        bent
          ? 'Die Anreißtabelle von Zeile 1 an durchgehen: Abstände von der linken Kante, dann von der nahen, dann schräge Linien von Punkt zu Punkt, dann Mitten. Jeden von der Kante, nie von der letzten Linie.'
          : 'Die Anreißtabelle von Zeile 1 an durchgehen: Abstände von den Kanten, schräge Linien von Punkt zu Punkt, dann Mitten. Jeden von der Kante, nie von der letzten Linie.',
        'Löcher leicht körnen; was ohne Loch verbunden wird, bekommt ein Bleistiftkreuz.',
        ...(noted ? [`Vorher ist über ${part} etwas zu wissen: es steht hinter der Seite Vorsicht.`] : []),
      ],
    }),
    cutOut: (part, openings) => ({
      title: `${part}: ausschneiden`,
      lines: [
        'Ausklinkungen und schräge Kanten an den breiten Linien des Plans schneiden, auf der Abfallseite; Freibohrungen zuerst bohren, wo der Plan welche hat. Bis zur Ecke einer Ausklinkung von beiden Seiten schneiden, nie darüber. Schnitte feilen.',
        ...(openings === 0
          ? []
          : [
              `${openings === 1 ? 'Ein Ausschnitt' : `${openings} Ausschnitte`}: innerhalb der Linie bohren, zuerst an jedem runden Ende und jeder Ecke, dann bis an die Linie sägen, knabbern oder feilen. Das Blech bleibt beiderseits des Schnitts gespannt.`,
            ]),
      ],
    }),
    drill: (part, holes, unit) => ({
      title: `${part}: bohren`,
      lines: [
        ...holes.map(({ count, diameter, purpose, firstOnly }) =>
          firstOnly
            ? `Ø${diameter} ${unit} (${purpose}): von den ${count} angerissenen nur das mittlere jeder Reihe bohren. Die anderen werden durch das andere Teil gebohrt, wenn beide geklemmt sind.`
            : `${count} × Ø${diameter} ${unit}${purpose === '' ? '' : ` (${purpose})`}.`,
        ),
        'Körnen, das Blech auf einem Holzklotz festspannen, erst klein, dann fertig bohren. Ein großes Loch besser lochen, sägen oder mit der Lochsäge schneiden. Beide Seiten entgraten.',
      ],
    }),
    check: (part, bent, sizes, unit) => ({
      title: `${part}: messen`,
      lines: [
        sizes.length === 0
          ? 'Messen und das Prüfblatt ausfüllen.'
          : `In ${unit}: ${sizes.join(', ')}. Das Prüfblatt ausfüllen.${bent ? ' Zuerst die Winkel von Hand richten: die meisten Fehler sind Winkel.' : ''}`,
      ],
    }),
    measure: (part, { size, own, between, planned }, unit) => ({
      title: `Bevor ${part} geschnitten wird: messen, wo es hineinpasst`,
      lines: [
        between === null
          ? `Zwischen den Wänden messen, wo ${part} stehen wird, an beiden Enden und in der Mitte: geplant sind ${planned} ${unit}${size === null ? '' : ` (${size})`}.`
          : `Den lichten Abstand zwischen ${between[0]} und ${between[1]} messen, wo ${part} sitzen wird: geplant sind ${planned} ${unit}.`,
        `Das kleinste Maß gilt. Wo es nicht wie geplant ist, ${part} um den Unterschied kleiner oder größer machen: in der Anreißtabelle wandern die Linien der fernen Hälfte um so viel. Mit dem Programm: ${
          size === null
            ? `${own ?? `das Maß von ${part}`} im Auftrag ändern`
            : `tinwright refit JOB --measured ${size}=LENGTH`.replaceAll(' ', '\u00A0')
        } und den Plan neu drucken.`,
      ],
    }),
    trialJoint: (fastener) => ({
      title: `Probe an Abfall: ${fastenerOf(fastener).one}`,
      lines: TRIAL_JOINTS[fastener] ?? ['Zwei Streifen vom selben Blech verbinden und zu trennen versuchen.'],
    }),
    place: (joints, fastener, unit) => ({
      title: fastener !== null ? `Einsetzen und klemmen: ${names(joints)}` : `Einsetzen: ${names(joints)}`,
      lines:
        fastener !== null
          ? [
              `${pairs(joints)}, wie der Verbindungsplan zeigt; Anriss liegt auf Anriss.${drilled(fastener) ? '' : ' Was zwischen den Blechen verschwindet, vorher auf die Außenseite eines der beiden übertragen.'} Daneben bleiben mindestens ${[...new Set(joints.map((j) => j.clearance))].join(' oder ')} ${unit} frei.`,
              'Leicht klemmen. Mit dem Winkel prüfen, dass es senkrecht steht, beide Enden gleich sind und beide Diagonalen über die offene Seite gleich lang. Rücken, bis es stimmt, dann fest klemmen.',
            ]
          : [`${pairs(joints)}. Es hält ohne Verbindungsmittel.`],
    }),
    first: (fastener, joints) => {
      const { one, first, a } = fastenerOf(fastener);
      return {
        title: `${first} ${one}: ${names(joints)}`,
        lines: [
          `In jeder Verbindung ${a} ${one} setzen, der Mitte der Reihe am nächsten.${
            drilled(fastener) ? ' Wo das Loch noch fehlt, durch das andere Teil bohren und entgraten.' : ''
          }`,
          'Dann zum letzten Mal schauen: rechtwinklig, beide Enden senkrecht, Kanten bündig, nichts verdreht. Sonst lösen und neu klemmen.',
        ],
      };
    },
    rest: (fastener, joints) => ({
      title: `Die anderen ${fastenerOf(fastener).more}: ${names(joints)}`,
      lines: [
        `${joints.map((j) => `${j.joint} insgesamt ${j.count}`).join(', ')}. Von der Mitte nach außen, links und rechts im Wechsel.${
          drilled(fastener)
            ? ' Fehlende Löcher durch die des anderen Teils bohren, entgraten, und jedes Mal setzen, bevor das nächste gebohrt wird.'
            : ''
        }`,
      ],
    }),
    finish: {
      title: 'Fertig machen',
      lines: [
        'Mit einem Baumwollhandschuh über jede Kante und Ecke fahren; wo er hängen bleibt, feilen. Vorstehende Ecken runden. Öl und Späne abwaschen.',
      ],
    },
    inspect: {
      title: 'Prüfen',
      lines: [
        'Die letzten Spalten des Prüfblatts ausfüllen und unterschreiben. Auf jede Verbindung von Hand drücken: nichts bewegt sich.',
      ],
    },
  },
  joints: {
    heading: 'Verbindungen',
    columns: {
      joint: 'Stelle',
      pieces: 'Teile',
      by: 'durch',
      count: 'Anzahl',
      pitch: 'Teilung',
      hole: 'Loch',
      clearance: 'Spalt daneben',
    },
    placed: 'eingesetzt',
    pictureAlt: (job) =>
      `${job === '' ? 'Das Stück' : job} an den Verbindungen auseinandergezogen; Kreuze sind Schweißpunkte`,
    picture: 'Welches Teil wohin gehört',
    rules: 'Was die Verbindungsmittel brauchen',
    ruleColumns: { by: 'Mitten, mindestens', edge: 'vom Rand', pitch: 'Teilung', bend: 'von der Kantung' },
    drill: (rivet, drill) => `Niet ${rivet}: Bohrer ${drill}.`,
    by: (sources) => `Abstände (auf Englisch): ${sources}.`,
    grip: (stack) => `Die Bleche sind zusammen ${stack} dick.`,
    notes: [
      'Wo die Verbindungsmittel sitzen, ist auf den Plänen beider Teile angerissen: auf jedem dieselbe Stelle. Keine Handschuhe am Bohrer, Augen schützen, wenn Nietdorne reißen oder Funken fliegen.',
      'Die Abstände sagen, wo ein Verbindungsmittel im Blech hält, nicht was es trägt. Keine Tragfähigkeit.',
    ],
  },
  inspection: {
    heading: (part, quantity) => (quantity === 1 ? part : `${part}, ${quantity} Stück`),
    columns: { what: 'Maß', nominal: 'soll', limit: 'Toleranz' },
    measured: (n, of) => (of === 1 ? 'ist' : `ist ${n}`),
    sides: {
      inside: 'innen',
      outside: 'außen',
      mould: 'bis dahin, wo sich die Außenseiten träfen',
      flat: '',
    },
    blankX: 'Zuschnitt, entlang der nahen Kante',
    blankY: 'Zuschnitt, entlang der linken Kante',
    overall: { x: 'Länge über alles', y: 'Breite über alles', z: 'Höhe über alles' },
    angle: (numbers) => `Winkel von ${numbers}, mit Winkel oder Winkelmesser`,
    object: 'Zusammengesetzt',
    notes: (cut, bent) => [
      `Schnittmaße nach ISO 2768-1 Klasse ${cut}, gebogene Maße nach Klasse ${bent}: was eine Abkantbank von Hand hält (welche Klasse das ist, und ±2° für Winkel, aus dem Gedächtnis).`,
      'Außen oder innen messen, wie es in der Zeile steht, an beiden Enden und in der Mitte; den schlechtesten Wert aufschreiben. Mehr Stücke als Spalten: das Blatt kopieren.',
    ],
    sign: 'Geprüft von, Datum:',
  },
  worksheet: {
    title: (part) => `Arbeitsblatt: ${part}`,
    set: (n, of) => (of === 1 ? 'Arbeitsblatt' : `Satz ${n} von ${of}`),
    name: 'Name:',
    ask: (letters, unit) =>
      `Auf der Abwicklung dieses Teils fehlen die Maße ${letters}. In ${unit} ausrechnen, den Weg aufschreiben und auf der Abwicklung eintragen.`,
    datum:
      'Jedes Maß auf der Abwicklung zählt von der linken oder der nahen Kante. Mit den Fertigmaßen anfangen.',
    bends: [
      'Eine gestreckte Länge ist die Summe der Außenlängen, weniger einen Abzug für jede Kantung dazwischen.',
      'Eine Biegelinie liegt in der Mitte ihres Biegestreifens: eine halbe Zugabe vom Ende der ebenen Fläche. Eine ebene Fläche ist so lang wie ihre Außenlänge, weniger einen halben Abzug und eine halbe Zugabe je Kantung daneben.',
    ],
    columns: { letter: '', working: 'Rechnung', size: 'Maß' },
    answerColumns: { part: 'Teil', letter: '', what: 'was', size: 'Maß' },
    bendLine: (numbers) => `Biegelinie ${numbers}`,
    edge: 'Kante oder Ecke',
    answersNote: 'Für die Lehrkraft: diese Seite herausnehmen, bevor die Blätter ausgeteilt werden.',
  },
};

const drilled = (fastener: string): boolean => fastener === 'blind-rivet' || fastener === 'screw';
