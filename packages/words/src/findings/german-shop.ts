import type { ShopFindings } from '@tinwright/shop';
import { fewMends } from '../reasons/few-mends.js';
import { germanReason } from '../reasons/german.js';
import { germanMend } from '../reasons/german-mend.js';
import type { Tellings } from './telling.js';

const two = (names: readonly string[]) => names.join(' und ');

/** What a shop finds, in German. */
export const GERMAN_SHOP: Tellings<ShopFindings> = {
  'blank-large': {
    message: ({ x, y, value, limit }, t) =>
      `ein Zuschnitt von ${t.size(x)} mal ${t.size(y)} passt auf keine Tafel im Lager: ${t.size(value)}, höchstens ${t.most(limit)}`,
    aim: ({ limit }, t) => `den Zuschnitt in dieser Richtung bei höchstens ${t.most(limit)} halten`,
    remedy: () => 'aus zwei Teilen zusammensetzen',
  },
  'cut-large': {
    message: ({ value, limit, machine }, t) =>
      `der Zuschnitt ist ${t.size(value)} lang, ${machine} nimmt ${t.most(limit)}`,
    aim: ({ limit }, t) => `den Zuschnitt bei höchstens ${t.most(limit)} halten`,
    remedy: () => 'mit der Blechschere von Hand schneiden',
  },
  'sheet-thick': {
    message: ({ value, limit, machine, material }, t) =>
      `${t.material(material)} von ${t.size(value)}, ${machine} nimmt ${t.most(limit)}`,
    aim: ({ limit }, t) => `Blech von ${t.most(limit)} oder dünner nehmen`,
  },
  'leg-short': {
    message: ({ value, limit, names: [panel] }, t) =>
      `${panel} ist außen ${t.size(value)} lang, für den Radius der Kantung mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `auf ${t.least(limit)} oder mehr verlängern`,
    remedy: () => 'mit kleinerem Radius kanten',
  },
  'flange-low': {
    message: ({ value, limit, panel, names: [name] }, t) =>
      `${name} ist ${t.size(value)} hoch an einer Fläche von ${t.size(panel)}, die beim Kanten durchhängt: mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} oder höher machen`,
    remedy: () => 'die Fläche beim Kanten stützen',
  },
  'radius-made': {
    message: ({ value, names: [bend], asked, made, longer, machine }, t) =>
      `${bend} verlangt innen ${t.size(asked)}, ${machine} macht ${t.size(made)}: beide Schenkel werden zusammen ${t.size(value)} ${longer > 0 ? 'länger' : 'kürzer'}`,
    aim: ({ asked, made, least }, t) =>
      made < least - 1e-6
        ? `über Werkzeuge kanten, die ${t.least(Math.max(asked, least))} machen; dieses Metall braucht mindestens ${t.least(least)}`
        : `mit insideRadius ${t.size(made)} auslegen`,
  },
  'radius-strict': {
    message: ({ value, limit, names, material, thickness }, t) =>
      `Innenradius ${t.size(value)} bei ${names.join(', ')}; für ${t.material(material)} von ${t.size(thickness)} verlangt die strengere von zwei Quellen ${t.least(limit)}`,
    aim: ({ limit }, t) => `innen mit ${t.least(limit)} kanten oder erst an einem Reststück probieren`,
  },
  'hem-tight': {
    message: ({ value, limit, names: [hem], material, thickness }, t) =>
      `${hem} wird innen auf ${t.size(value)} gefaltet, ${t.material(material)} von ${t.size(thickness)} verträgt ${t.least(limit)}: es kann reißen`,
    aim: ({ limit }, t) => `einen offenen Umschlag mit mindestens ${t.least(2 * limit)} Spalt nehmen`,
    remedy: () => 'an einem Reststück probieren',
  },
  'hem-short': {
    message: ({ value, limit, names: [hem] }, t) =>
      `${hem} ist ab der Falzlinie ${t.size(value)} breit, mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} oder breiter machen`,
  },
  'hem-near-bend': {
    message: ({ value, limit, names }, t) =>
      `${t.size(value)} Wand zwischen den Falzen ${two(names)}, mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} dazwischen lassen`,
  },
  'offset-small': {
    message: ({ value, limit, names: [panel] }, t) =>
      `${panel} versetzt um ${t.size(value)}; bis ${t.most(limit)} braucht es ein Abkröpfwerkzeug, nicht zwei Kantungen`,
    aim: ({ limit }, t) => `um mehr als ${t.least(limit)} versetzen`,
    remedy: () => 'im Abkröpfwerkzeug pressen',
  },
  'corner-gap': {
    message: ({ value, limit, names }, t) =>
      `gekantet bleiben ${t.size(value)} zwischen ${two(names)}, mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `dort ${t.least(limit)} lassen`,
    remedy: () => 'die Kanten vor dem Kanten zurückfeilen',
  },
  'relief-shallow': {
    message: ({ value, limit, corners, names }, t) =>
      `der Schnitt an ${corners} ${corners === 1 ? 'Ecke' : 'Ecken'} von ${names.join(', ')} endet ${value < 0.01 ? 'auf' : `${t.size(value)} hinter`} den Tangentenlinien der Kantungen, die sich dort treffen; ${t.least(limit)} dahinter wirft das Blech keine Falten`,
    remedy: ({ drill }, t) => `dort vor dem Schneiden ein Loch von ${t.size(drill)} bohren`,
  },
  'relief-narrow': {
    message: ({ value, limit, names: [bend] }, t) =>
      `der Schnitt neben dem Ende der Kantung ${bend} ist ${t.size(value)} breit, mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} breit schneiden`,
  },
  'hole-near-bend': {
    message: ({ value, limit, names: [panel], bend, diameter, of }, t) => {
      const kind = of === 'joint' ? 'das Loch einer Verbindung' : 'ein Loch';
      const hole =
        diameter === null ? `ein Ausschnitt in ${panel}` : `${kind} von ${t.size(diameter)} in ${panel}`;
      return value > 0
        ? `${hole} endet ${t.size(value)} vor der Kantung ${bend}, mindestens ${t.least(limit)}`
        : `${hole} läuft in die Kantung ${bend}, mindestens ${t.least(limit)} davor`;
    },
    aim: ({ limit }, t) => `seinen Rand ${t.least(limit)} von der Kantung weg halten`,
    remedy: ({ diameter }) => (diameter === null ? 'nach dem Kanten ausschneiden' : 'nach dem Kanten bohren'),
  },
  'slot-near-bend': {
    message: ({ value, limit, names: [panel], bend }, t) =>
      `ein Schlitz in ${panel} neben ${bend} endet ${t.size(value)} vor der Kantung, mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} von der Kantung weg halten`,
    remedy: () => 'nach dem Kanten schneiden',
  },
  'hole-small': {
    message: ({ value, limit, names: [panel], material }, t) =>
      `ein Loch von ${t.size(value)} in ${panel}, in ${t.material(material)} dieser Dicke mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} oder größer machen`,
    remedy: () => 'bohren',
  },
  'hole-under-table': {
    message: ({ value, limit, names: [panel], table }, t) =>
      `${table} schneidet Löcher ab ${t.least(limit)}, eines in ${panel} hat ${t.size(value)}`,
    aim: () => 'von Hand bohren und nicht auf dem Tisch schneiden; die Mitte steht im Plan',
  },
  'gap-under-kerf': {
    message: ({ value, limit, table }, t) =>
      `ein Spalt von ${t.size(value)} in der Kontur, die Schnittfuge von ${table} ist ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} breit machen`,
    remedy: () => 'von Hand sägen oder schneiden',
  },
  'web-narrow': {
    message: ({ value, limit, names: [panel], beside }, t) =>
      `${t.size(Math.max(0, value))} Metall zwischen ${beside === 'hole' ? `zwei Löchern in ${panel}` : `einem Loch in ${panel} und der Kante`}, mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} dazwischen lassen`,
  },
  'notch-narrow': {
    message: ({ value, limit }, t) => `eine Ausklinkung ${t.size(value)} breit, mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} breit machen`,
    remedy: () => 'von Hand sägen',
  },
  'notch-deep': {
    message: ({ value, deep, most }, t) =>
      `eine Ausklinkung ${t.size(value)} breit und ${t.size(deep)} tief: mehr als ${most} Breiten sind schwer zu stanzen oder zu schneiden`,
    aim: ({ limit }, t) => `${t.least(limit)} breit machen`,
    remedy: () => 'von Hand sägen',
  },
  'tab-narrow': {
    message: ({ value, limit }, t) => `ein Steg ${t.size(value)} breit, mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) => `${t.least(limit)} breit machen`,
  },
  'tab-long': {
    message: ({ value, long, most }, t) =>
      `eine Lasche ${t.size(value)} breit und ${t.size(long)} lang: mehr als ${most} Breiten verbiegen beim Anfassen`,
    aim: ({ limit }, t) => `${t.least(limit)} breit machen`,
    remedy: () => 'bis zum letzten Schnitt an der Tafel lassen',
  },
  'weld-electrode': {
    message: ({ value, limit, names: [panel], bend }, t) =>
      `ein Schweißpunkt in ${panel} liegt ${t.size(value)} neben der Kantung ${bend}, für die Elektrode mindestens ${t.least(limit)}`,
    aim: ({ limit, electrode }, t) =>
      electrode === null
        ? `${t.least(limit)} neben der Kantung lassen`
        : `Elektroden von höchstens ${t.most(electrode)} nehmen`,
  },
  grain: {
    message: ({ value, names, axis, runs }, t) =>
      runs === 'across'
        ? `Kantungen mit Innenradius ${t.size(value)}: quer zur Walzrichtung laufen sie nur, wenn ${axis} des Zuschnitts entlang der langen Seite der Tafel liegt`
        : `${names.join(', ')} mit Innenradius ${t.size(value)} ${names.length === 1 ? 'liegt' : 'liegen'} entlang der Walzrichtung, wie der Zuschnitt auch gelegt wird: so reißt Blech eher`,
    aim: ({ limit, axis, runs }, t) =>
      runs === 'across'
        ? `den Zuschnitt mit ${axis} entlang der langen Seite der Tafel legen`
        : `innen mit ${t.least(limit)} kanten oder eine Kantung entlang der Walzrichtung an einem Reststück probieren`,
  },
  tolerance: {
    message: ({ expected }, t) =>
      `zu erwarten sind ${expected
        .map(({ on, size, deviation, angle }) =>
          on === 'bent'
            ? `±${t.size(deviation)} am gekanteten Maß von ${t.size(size)} und ±${angle}° an den Winkeln`
            : `±${t.size(deviation)} an der Schnittlänge von ${t.size(size)}`,
        )
        .join(', ')}`,
    aim: () => 'wo ein Maß genauer sein muss, das erste Stück messen und das nächste berichtigen',
  },
  'welder-missing': {
    message: () => 'Schweißpunkte, und die Werkstatt hat kein Punktschweißgerät',
    aim: () => 'nieten',
  },
  'welder-sheet': {
    message: ({ value, machine, least, most }, t) =>
      `ein Blech von ${t.size(value)}, ${machine} schweißt ${t.least(least)} bis ${t.most(most)}`,
    aim: ({ least, most }, t) => `Blech von ${t.least(least)} bis ${t.most(most)} nehmen oder nieten`,
  },
  'welder-throat': {
    message: ({ value, limit, machine }, t) =>
      `der innerste Punkt liegt ${t.size(value)} von da, wo die Arme hineinkommen; ${machine} lädt ${t.most(limit)} aus`,
    aim: () => 'schweißen, bevor die Teile im Weg sind, oder nieten',
  },
  'riveter-missing': {
    message: () => 'Blindniete, und die Werkstatt hat keine Nietzange',
    aim: () => 'schrauben oder schweißen',
  },
  'riveter-size': {
    message: ({ value, machine, sets }, t) =>
      `Niete von ${t.size(value)}, ${machine} setzt ${sets.map(t.size).join(', ')}`,
    aim: ({ limit }, t) => `Niete von ${t.size(limit)} nehmen`,
  },
  'strip-contradicts': {
    message: ({ value, k, opens, fit, ...f }, t) =>
      f.in === 'lengths'
        ? `widerspricht den anderen: seine Verkürzung weicht um ${t.size(value)} ab (für sich K = ${t.number(k, 3)})`
        : `widerspricht den anderen: er federt bei 90° um ${t.number(opens, 2)}° auf, die anderen um ${t.number(fit, 2)}°`,
    aim: () => 'noch einmal messen oder aus der Datei nehmen',
  },
  'strip-closes': {
    message: ({ value, set }, t) =>
      `steht bei ${t.number(value, 2)}°, weiter gebogen als die eingestellten ${t.number(set, 2)}°; Metall federt auf`,
    aim: ({ value }, t) =>
      `beides als Biegewinkel aus der Ebene angeben: zeigt der Winkelmesser ${t.number(value, 2)}° zwischen den Schenkeln, sind es ${t.number(180 - value, 2)}°`,
  },
  'strip-narrow': {
    message: ({ value }, t) =>
      `${t.size(value)} breit; eine so kurze Kantung weicht an den Enden aus wie an keinem Teil`,
    aim: ({ limit }, t) => `einen Streifen von ${t.least(limit)} oder mehr kanten`,
  },
  'strip-few': {
    message: ({ value }) =>
      `${value} Streifen gezählt; der Fehler ist, was die Ablesung zulässt, die Streuung zeigt sich noch nicht`,
    aim: ({ limit }) => `${limit} Streifen oder mehr kanten und messen`,
  },
  'die-narrow': {
    message: ({ value, limit, names: [bend], die, times }, t) =>
      `${bend} über ${die}: ein V von ${t.size(value)} misst ${t.number(times, 1)} Blechdicken, in der Regel mindestens ${t.least(limit)}: ein engeres drückt sich ins Blech, und die Kraft ist hoch`,
    aim: ({ usual }, t) =>
      `über einem V von etwa ${t.size(usual)} kanten oder erst an einem Reststück probieren`,
  },
  'die-wide': {
    message: ({ value, limit, names: [bend], die, times }, t) =>
      `${bend} über ${die}: ein V von ${t.size(value)} misst ${t.number(times, 1)} Blechdicken, Tabellen gehen bis ${t.most(limit)}: der Winkel wird weniger sicher`,
    aim: ({ usual }, t) =>
      `erst ein Reststück kanten; wo der Radius kleiner sein darf, ist ein V von etwa ${t.size(usual)} üblich`,
  },
  'bend-order': {
    message: ({ shop, proved, reason }, t) =>
      `${proved ? 'keine Reihenfolge der Kantungen geht' : 'keine Reihenfolge der Kantungen gefunden'} in ${shop ?? 'der Werkstatt'}${reason === null ? '' : `: ${germanReason(reason, t)}`}`,
    aim: ({ mends }, t) =>
      mends.length === 0
        ? 'kein anderes Maß, Werkzeug und keine andere Maschine, die versucht wurden, machen es möglich: aus mehr Stücken oder mit anderen Kantungen machen'
        : fewMends(mends)
            .map((m) => germanMend(m, t))
            .join('; oder '),
  },
};
