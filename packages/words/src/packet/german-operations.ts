import type { KnownFastener } from '@tinwright/core/family';
import { inHole, names } from './joint-facts.js';
import type { JointFacts, PacketWords } from './words.js';

const pairs = (joints: readonly JointFacts[]) =>
  joints
    .map((j) =>
      j.from === j.to ? `${j.from}, die eigenen Ränder (${j.joint})` : `${j.to} an ${j.from} (${j.joint})`,
    )
    .join(', ');

/** Name, its plural, and the word before the first and the other ones. */
const K = 'K = ((2 × (R + T) – Abzug) × 0,637 – R) ÷ T; R ist der Innenradius, T die Dicke';

const FASTENERS: Readonly<Record<string, { one: string; more: string; first: string; a: string }>> = {
  'spot-weld': { one: 'Schweißpunkt', more: 'Schweißpunkte', first: 'Erster', a: 'einen' },
  'plug-weld': { one: 'Lochschweißung', more: 'Lochschweißungen', first: 'Erste', a: 'eine' },
  'blind-rivet': { one: 'Niet', more: 'Niete', first: 'Erster', a: 'einen' },
  screw: { one: 'Schraube', more: 'Schrauben', first: 'Erste', a: 'eine' },
};
const fastenerOf = ({ name, facts }: KnownFastener) =>
  FASTENERS[name] ?? {
    ...(facts.words ?? { one: name, more: name }),
    first: 'Erste Verbindung:',
    a: 'eine Verbindung:',
  };

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

/** Operations of a packet in German. */
export const GERMAN_OPERATIONS: PacketWords['operations'] = {
  shop: (name, assumed) =>
    assumed
      ? `Es wurde keine Werkstatt angegeben. Die Maschinen sind angenommen: ${name}. Zahlen für Segmente, Anschlag und Winkel sind die der angenommenen Abkantbank; wo die eigene anders ist, eigene suchen.`
      : `Für die Maschinen von ${name}.`,
  found: (parts) => `Biegefolge für diese Maschinen gefunden: ${parts}.`,
  usual: (parts) =>
    `Für ${parts} steht die übliche Biegefolge (Umschläge, dann innen vor außen, dann kurz vor lang; übliche Praxis, ohne Quelle). Keine Maschine wurde geprüft: das Teil erst aus Papier falten und sehen, ob nichts im Weg ist.`,
  impossible: (part, reasons, helps) =>
    `Auf diesen Maschinen wurde für ${part} keine Biegefolge gefunden: ${reasons}. ${helps.length === 0 ? 'Nichts, was versucht wurde, hilft: jemanden mit anderen Maschinen fragen.' : `Damit ginge es: ${helps.join('; oder ')}.`} Angegeben ist hier die übliche Folge, die diese Maschinen nicht können.`,
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
    pliers: 'breite Flachzange',
    screwdriver: 'Schraubendreher und Schrauben',
  },
  reasons: {
    'metal-differs': 'kein Blech und keine Maschine gleicht der anderen; Abfall ist billiger als ein Teil',
    'all-from-edges': 'alles wird von zwei Kanten gemessen, also müssen sie gerade und rechtwinklig sein',
    'burrs-lift': 'Grate schneiden, und mit ihnen liegt das Blech nicht flach an Maßstab, Tisch und Anschlag',
    'each-from-datum': 'von der letzten Linie gemessen, sammeln sich kleine Fehler',
    'scratch-cracks': 'ein Kratzer außen am Bug kann reißen',
    'flat-while-it-can': 'stehen die Wände, kommt die Schere nicht mehr hin',
    'walls-block-drill':
      'stehen die Wände, kommt der Bohrer vielleicht nicht mehr hin, und flaches Blech liegt fest auf',
    'match-drill': 'durch beide Teile gebohrte Löcher passen; zweimal angerissene selten',
    'hems-before-walls': 'Umschläge drückt man zu und Kanten rollt man, solange das Blech daneben flach ist',
    'inner-before-outer': 'was an einer Wand hängt, wird gebogen, bevor die Wand im Weg steht',
    'short-before-long': 'kurze Wände passen zwischen die Segmente, lange gehen dann daran vorbei',
    'found-order': 'in dieser Folge passt jede Kantung noch in die Maschine',
    'correct-while-open': 'jetzt lässt es sich noch richten',
    'bends-vary':
      'Kantungen fallen auf jeder Maschine etwas anders aus; das nächste Teil wird nach dem gemacht, was da ist',
    'spring-in':
      'kein gerader Weg führt an Umschlägen oder Kanten vorbei hinein: die Wände von Hand auseinanderfedern, ein Ende zuerst; geben sie nicht nach, das Teil kleiner machen oder die letzte Wand danach biegen',
    'seat-square': 'was schief geklemmt ist, bleibt schief',
    'first-can-be-undone': 'ein Punkt lässt sich noch lösen; zwei halten, was falsch ist',
    'middle-outwards': 'jede Verbindung schiebt das Blech vor sich her; von der Mitte aus kann es ausweichen',
    'holds-by-others': 'es wird von dem gehalten, was darum steht',
    'hands-and-cloth': 'es wird mit bloßen Händen getragen',
    'play-small':
      'es hat weniger Spiel, als Kantungen abweichen dürfen (ISO 2768-1 m): Planmaße genügen nicht',
    'measured-is-known': 'was nicht gemessen ist, weiß man nicht',
  },
  why: (text) => `Warum: ${text}.`,
  with: (tools) => `Mit: ${tools}`,
  leafTerms:
    'Anlegelinie: was unter der Kante der Segmente liegt, um die gebogen wird. Anschlag: von dieser Kante bis zur Blechkante, die hinten anliegt. Rückstand: wie weit diese Kante hinter der Kante der Biegewange steht.',
  glossary:
    'Richtungen sind die des Bildes: das Blech, wie es zum Anreißen vor einem liegt. Auch Flächen heißen danach: West (west) ist links, Ost (east) rechts, Nord (north) fern, Süd (south) nah.',
  directions: {
    heading: 'Richtungen',
    alt: 'Das Blech, wie es vor einem liegt, Anrissseite oben: nahe Kante zum Körper, ferne Kante vom Körper weg, linke und rechte Kante; die Bezugsecke ist nah links',
    face: 'Anrissseite oben',
    datum: 'Bezugsecke',
    you: 'Standplatz',
    note: 'Sie gehören zum Blech und drehen sich mit ihm: „rechte Kante zum Körper“ meint diese rechte Kante.',
  },
  heading: 'In dieser Reihenfolge',
  pictures:
    'Auf den Bildern der Biegungen sind Querschnitte von links gesehen; wo das Teil in der Maschine liegt, ist der Standplatz rechts unten. Dick: dreht sich. Schraffiert: gehalten.',
  plans: 'Pläne lesen',
  asBefore: (number) => `Wie Arbeitsgang ${number}.`,
  again: (numbers) =>
    `${numbers.length === 1 ? 'Zweimal' : `${numbers.length + 1}-mal`}: ebenso Arbeitsgang ${numbers.join(', ')}.`,
  trialBend: ({ thickness, radius, length, width, deduction, laidOut }, unit) => ({
    title: 'Probestreifen biegen',
    lines: [
      `Einen Streifen vom selben Blech (${thickness}) schneiden, genau ${length} ${unit} lang und etwa ${width} ${unit} breit. Die Mitte anreißen, dort auf 90° biegen, Innenradius ${radius} ${unit}, und beide Schenkel außen messen. Beide zusammen, weniger die Länge des Streifens, sind der Abzug.`,
      laidOut === 'nominal'
        ? `${deduction === null ? '' : `Das Blech nimmt voraussichtlich ${deduction} ${unit}; die Pläne ziehen nichts ab, um so viel werden beide Schenkel zusammen länger. `}Weicht er um mehr als ein Fünftel der Dicke ab, so auch die geformten Maße: die Mappe neu drucken, mit forms: { rule: k-factor, k: K } im Auftrag, ${K}.`
        : `${deduction === null ? 'Die Pläne nennen die erwarteten Abzüge.' : `Die Pläne erwarten ${deduction} ${unit}.`} Weicht er um mehr als ein Fünftel der Dicke ab, die Mappe neu drucken, mit ${K}. Sonst weiter.`,
    ],
  }),
  shear: (part, quantity, x, y, diagonal, unit, how) => ({
    title: `${part}: ${quantity === 1 ? '1 Zuschnitt' : `${quantity} Zuschnitte`} schneiden`,
    lines: [
      `${x} × ${y} ${unit}, rechtwinklig, wenn beide Diagonalen ${diagonal} sind.`,
      how === 'numbered'
        ? 'Die Schnitte der Zuschnittliste in ihrer Reihenfolge machen.'
        : 'Erst eine lange Kante gerade schneiden, dann die anderen rechtwinklig dazu.',
    ],
  }),
  deburr: (part) => ({
    title: `${part}: entgraten`,
    lines: ['Alle vier Kanten auf beiden Seiten entgraten und das Blech sauber wischen.'],
  }),
  mark: (part, noted) => ({
    title: `${part}: anreißen`,
    lines: [
      `Den Plan von ${part} nehmen.`,
      ...(noted ? [`Vorher ist über ${part} etwas zu wissen: es steht hinter der Seite Vorsicht.`] : []),
      'Das Blech hinlegen, wie die Abwicklung gezeichnet ist: Bezugsecke nah links. Die Seite, auf der angerissen wird, ist die Anrissseite; den Namen des Teils darauf schreiben.',
      'Die Anreißtabelle Zeile für Zeile durchgehen: Maßstab oder Winkel einmal einstellen und von jeder genannten Kante so weit anreißen, wie die Zeile sagt. Von der Kante messen, nie von der letzten Linie.',
      'Löcher leicht körnen; was ohne Loch verbunden wird, bekommt ein Bleistiftkreuz.',
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
      ...holes.map(({ count, diameter, purpose, drill, firstOnly }) =>
        firstOnly
          ? `Ø${diameter} ${unit} (${purpose}${drill === '' ? '' : `, Bohrer ${drill}`}): von den ${count} angerissenen nur eines je Reihe bohren, das mittlere, von zweien eines. Die anderen werden durch das andere Teil gebohrt, wenn beide geklemmt sind.`
          : `${count} × Ø${diameter} ${unit}${purpose === '' ? '' : ` (${purpose}${drill === '' ? '' : `, Bohrer ${drill}`})`}.`,
      ),
      'Körnen, das Blech auf einem Holzklotz festspannen, erst klein, dann fertig bohren. Ein großes Loch besser lochen, sägen oder mit der Lochsäge schneiden. Beide Seiten entgraten.',
    ],
  }),
  form: (part, { flaps, side, height, angle }, unit) => ({
    title: `${part}: ${flaps === 1 ? 'Lappen der Kieme' : `${flaps} Lappen der Kiemen`} ausbiegen`,
    lines: [
      `Jeder Lappen ist an drei Seiten frei geschnitten. Mit einer breiten Flachzange an der angerissenen Linie greifen und ${side === 'up' ? 'zur Anrissseite' : 'von der Anrissseite weg'} um ${angle}° biegen, bis die freie Kante ${height} ${unit} vom Blech steht, nach und nach von einem Ende zum anderen. Bilder und Passung zeigen ihn flach.`,
      'Freie Kanten und Enden der Schnitte feilen; ein Riss an einem Ende wird ausgebohrt.',
    ],
  }),
  check: (part, bent, sizes, unit) => ({
    title: `${part}: messen`,
    lines: [
      ...(bent ? ['Zuerst die Winkel von Hand richten: die meisten Fehler sind Winkel.'] : []),
      sizes === null
        ? 'Das Prüfblatt ausfüllen.'
        : `In ${unit === 'in' ? 'Zoll' : unit}: ${sizes.join('; ')}.`,
    ],
  }),
  measure: (part, { size, own, between, planned, follows, over }, unit) => ({
    title: `Bevor ${part} geschnitten wird: messen, wozu es passt`,
    lines: [
      follows !== null
        ? `${follows.part} messen, ${follows.what}, an beiden Enden und in der Mitte: geplant sind ${planned} ${unit} (${size}).`
        : between === null
          ? `Zwischen den Wänden messen, wo ${part} stehen wird, an beiden Enden und in der Mitte: geplant sind ${planned} ${unit}${size === null ? '' : ` (${size})`}.`
          : `Den lichten Abstand zwischen ${between[0]} und ${between[1]} messen, wo ${part} sitzen wird: geplant sind ${planned} ${unit}.`,
      `Das ${over ? 'größte' : 'kleinste'} Maß gilt.`,
      `Wo es nicht wie geplant ist, ${part} um den Unterschied kleiner oder größer machen: in der Anreißtabelle wandern die Linien der fernen Hälfte um so viel.`,
      `Mit dem Programm: ${
        size === null
          ? `${own ?? `das Maß von ${part}`} im Auftrag ändern`
          : `tinwright refit JOB --measured ${size}=LENGTH`.replaceAll(' ', '\u00A0')
      } und den Plan neu drucken.`,
    ],
  }),
  trialJoint: (fastener) => ({
    title: `Probe an Abfall: ${fastenerOf(fastener).one}`,
    lines: TRIAL_JOINTS[fastener.name] ??
      fastener.facts.words?.trial ?? ['Zwei Streifen vom selben Blech verbinden und zu trennen versuchen.'],
  }),
  place: (joints, fastener, unit) => ({
    title: fastener !== null ? `Einsetzen und klemmen: ${names(joints)}` : `Einsetzen: ${names(joints)}`,
    lines:
      fastener !== null
        ? [
            `${pairs(joints)}, wie der Verbindungsplan zeigt; daneben bleiben mindestens ${[...new Set(joints.map((j) => j.clearance))].join(' oder ')} ${unit} frei.`,
            'Anriss liegt auf Anriss.',
            ...(inHole(fastener)
              ? []
              : [
                  'Was zwischen den Blechen verschwindet, vorher auf die Außenseite eines der beiden übertragen.',
                ]),
            'Leicht klemmen. Mit dem Winkel prüfen, dass es senkrecht steht, beide Enden gleich sind und beide Diagonalen über die offene Seite gleich lang. Rücken, bis es stimmt, dann fest klemmen.',
          ]
        : [`${pairs(joints)}. Es hält ohne Verbindungsmittel.`],
  }),
  fit: ({ name, what, count, pieces, fastener, opens }) => ({
    title: `Anbringen: ${what}${count > 1 ? ` (${count})` : ''}, ${name}`,
    lines: [
      pieces.length > 1
        ? `${pieces.join(' und ')} zusammensetzen, wie der Verbindungsplan zeigt, geschlossen, Kanten bündig, und so halten. Über die Löcher beider legen.`
        : `Auf ${pieces[0]}, über die Löcher.`,
      fastener === null
        ? 'Befestigen, womit es geliefert wird.'
        : `${pieces.length > 1 ? 'In jede Hälfte' : 'Zuerst'} ${fastenerOf(fastener).a} ${fastenerOf(fastener).one} setzen, ${opens === null ? 'nachsehen, ob es gerade sitzt' : `von Hand ${opens}° öffnen und wieder schließen`}, dann die anderen.`,
      ...(opens === null ? [] : ['Beim Schließen keine Finger zwischen die Kanten.']),
    ],
  }),
  first: (fastener, joints) => {
    const { one, first, a } = fastenerOf(fastener);
    return {
      title: `${first} ${one}: ${names(joints)}`,
      lines: [
        `In jeder Verbindung ${a} ${one} setzen, der Mitte der Reihe am nächsten.${
          inHole(fastener) ? ' Wo das Loch noch fehlt, durch das andere Teil bohren und entgraten.' : ''
        }`,
        'Dann zum letzten Mal schauen: rechtwinklig, beide Enden senkrecht, Kanten bündig, nichts verdreht. Sonst lösen und neu klemmen.',
      ],
    };
  },
  rest: (fastener, joints) => ({
    title: `Die anderen ${fastenerOf(fastener).more}: ${names(joints)}`,
    lines: [
      `${joints.map((j) => `${j.joint} insgesamt ${j.count}`).join(', ')}.`,
      'Von der Mitte nach außen, links und rechts im Wechsel.',
      ...(inHole(fastener)
        ? [
            'Fehlende Löcher durch die des anderen Teils bohren, entgraten, und jedes Mal setzen, bevor das nächste gebohrt wird.',
          ]
        : []),
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
};
