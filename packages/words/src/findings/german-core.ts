import type { CoreFindings } from '@tinwright/core';
import type { Tellings } from './telling.js';

const CUT = 'die Stellen sind schon geschnitten: beim nächsten Stück daran denken';
const RIVET_IT = 'nieten oder Dicken nehmen, die näher beieinander liegen';

/** What the core finds, in German. */
export const GERMAN_CORE: Tellings<CoreFindings> = {
  'radius-small': {
    message: ({ value, limit, names, material, thickness }, t) =>
      `Innenradius ${t.size(value)} bei ${names.join(', ')}; für ${t.material(material)} von ${t.size(thickness)} sind es mindestens ${t.least(limit)}`,
    aim: ({ limit }, t) =>
      `innen mit ${t.least(limit)} kanten oder erst an einem Reststück quer zur Walzrichtung probieren`,
  },
  'no-compensation': {
    message: ({ value }, t) =>
      `mit Nennmaßen angerissen: fertige Maße werden größer, je Kantung um bis zu ${t.size(value)}`,
    aim: () => 'wo es auf Maße ankommt, eine andere Biegeregel nehmen',
  },
  'edge-short': {
    message: ({ value, limit, count }, t) =>
      count === 1
        ? `eine Kante von ${t.size(value)} ist kürzer als die ${t.size(limit)}, die ein Tisch scharf schneidet`
        : `${count} Kanten sind kürzer als die ${t.size(limit)}, die ein Tisch scharf schneidet, die kürzeste ${t.size(value)}`,
    aim: () => 'nachfeilen, wo es darauf ankommt, oder Spalte, Schlitze und Absätze dort größer machen',
  },
  'measured-far': {
    message: ({ size, measured, computed, value }, t) =>
      `${size} mit ${t.size(measured)} gemessen, berechnet ${t.size(computed)}: ${t.size(value)} auseinander`,
    aim: () => 'noch einmal messen; stimmt es, Blech und Kantungen prüfen',
  },
  'piece-loose': {
    message: ({ piece, more }) =>
      more === 0
        ? `${piece} ist mit nichts verbunden`
        : `${piece} und ${more} ${more === 1 ? 'weiteres Stück' : 'weitere Stücke'} davon sind mit nichts verbunden`,
    aim: () => 'eine Verbindung angeben oder die Stückzahl verringern',
  },
  'pieces-differ': {
    message: ({ quantity }) =>
      `die ${quantity} Stücke werden an verschiedenen Stellen verbunden; die gemeinsame Abwicklung trägt alle Anrisse`,
    aim: () => 'an jedem gleich viele Verbindungen verlangen oder eigene Teile daraus machen',
  },
  'loop-open': {
    message: ({ ends: [a, b], tilt, into, gap, aside, limit }, t) => {
      const wrong = [
        ...(tilt === null ? [] : [`die Teile stehen ${t.number(tilt, 2)}° zueinander`]),
        ...(into === null ? [] : [`die Teile laufen ${t.size(into)} ineinander`]),
        ...(gap === null ? [] : [`ein Spalt von ${t.size(gap)} bleibt offen, höchstens ${t.most(limit)}`]),
        ...(aside === null ? [] : [`die Anlageflächen liegen ${t.size(aside)} nebeneinander`]),
      ];
      return `die Verbindungen schließen nicht: zwischen ${a} und ${b}: ${wrong.join(' und ')}`;
    },
    aim: ({ tilt, ends: [a, b] }, t) =>
      tilt === null
        ? 'ein Maß des Teils um so viel ändern oder es dem anderen Teil folgen lassen'
        : tilt > 135
          ? `an der anderen Fläche von ${a} oder ${b} verbinden oder eines der Teile andersherum kanten`
          : `einen Winkel eines der Teile um ${t.number(tilt, 2)}° ändern oder an anderen Stellen verbinden`,
  },
  'joint-empty': {
    message: ({ ends: [a, b], value, limit }, t) =>
      value === 0
        ? `die Flächen von ${a} und ${b} liegen nicht aufeinander, hier kann nichts verbunden werden`
        : `zwischen ${a} und ${b} bleiben ${t.size(value)} offen, höchstens ${t.most(limit)}: eine Kantung ist im Weg`,
    aim: ({ value }) =>
      value === 0
        ? 'die Maße und die Verschiebung prüfen, die sie zusammenbringen'
        : 'eines der Maße so ändern, dass es von der Kantung frei bleibt',
  },
  'joint-overhang': {
    message: ({ panel, piece, over, value }, t) =>
      `${panel} von ${piece} steht ${t.size(value)} über die Kante von ${over}`,
    aim: ({ over }) => `schmaler machen, ${over} dort breiter machen oder die Ecken runden`,
  },
  'overlap-narrow': {
    message: ({ faces: [a, b], value, limit, toBend, bend }, t) =>
      `${a} auf ${b} ist schmal: ${t.size(value)} zu Kanten und ${t.size(toBend)} zu Kantungen sind möglich, ${t.size(limit)} und ${t.size(bend)} sind nötig`,
    aim: ({ more }, t) =>
      more === null
        ? CUT
        : `${t.least(more)} mehr überlappen lassen oder ein kleineres Verbindungsmittel nehmen`,
  },
  'joint-turns': {
    message: ({ faces: [a, b] }) => `${a} hängt an ${b} nur an einer Verbindung und kann sich darum drehen`,
    aim: ({ faces: [a, b], more }, t) =>
      more === null
        ? '2 verlangen'
        : `${a} und ${b} um ${t.least(more)} mehr überlappen lassen: dann passen zwei`,
  },
  'pitch-close': {
    message: ({ count, value, limit }, t) =>
      `zwei der ${count} Verbindungen stehen ${t.size(value)} auseinander, mindestens ${t.least(limit)}`,
    aim: ({ most }) =>
      most === null ? CUT : most === 1 ? 'nur eine verlangen' : `höchstens ${most} verlangen`,
  },
  'fastener-left-out': {
    message: ({ value, pitch }, t) =>
      `${value} der Verbindungen weggelassen: eine andere geht weniger als ${t.least(pitch)} daneben durch dasselbe Blech`,
    aim: () => 'selbst eine Anzahl oder Teilung verlangen oder es so lassen',
  },
  'hole-crowded': {
    message: ({ parts, value }) =>
      `Löcher ohne Platz an ${parts.join(', ')}, zu nah an einer Kante oder einem anderen Loch: ${value}; angerissen, nicht geschnitten`,
    aim: () => 'durch das andere Teil bohren oder an jedem Stück gleich viele verlangen',
  },
  'drill-after-bending': {
    message: ({ value, limit }, t) =>
      `Löcher einer Verbindung des Teils mit sich selbst könnten sich nach dem Kanten um ${t.size(value)} verfehlen, erlaubt sind ${t.most(limit)}; die des zweiten Blechs sind angerissen, nicht geschnitten`,
    aim: () =>
      'nach dem Kanten durch das erste Blech bohren oder Probestreifen biegen, damit die Regel sicherer wird',
  },
  'fastener-lost': {
    message: ({ made, other, value }) =>
      `${made} ist gefertigt, und ${value} seiner Verbindungsstellen treffen ${other} nicht mehr`,
    aim: ({ made, other }) => `die Maße von ${other} ändern oder ${made} neu machen`,
  },
  'fastener-apart': {
    message: ({ pieces: [a, b], value }, t) =>
      `${a} und ${b} sind beide gefertigt, und ihre Verbindungsstellen liegen ${t.size(value)} auseinander`,
    aim: ({ pieces: [, b] }) => `${b} neu machen oder neue Stellen durch beide bohren`,
  },
  'fastener-doubt': {
    message: ({ made, value }, t) =>
      `Löcher von ${made.join(' und ')} werden um die Mitte des Messmaßes angenommen: an welchem Ende es zu kurz oder zu lang ist, ist nicht bekannt, und sie können ${t.size(value)} davon entfernt liegen`,
    aim: ({ made }) =>
      `vor dem Zuschnitt des anderen Teils von einem Ende von ${made.join(' und ')} zu einem Loch messen, oder es durchbohren`,
  },
  'fit-tight': {
    message: ({ between: [a, b], value, limit }, t) =>
      `${t.size(value)} zwischen ${t.spot(a)} und ${t.spot(b)}, verlangt sind ${t.size(limit)}`,
    aim: ({ value, limit }, t) => `${t.least(limit - value)} mehr geben oder weniger Spiel verlangen`,
  },
  'fastener-in-way': {
    message: ({ piece, count, value }, t) =>
      `${count === 1 ? 'Kopf oder Ende eines Verbinders steht' : `Köpfe oder Enden von ${count} Verbindern stehen`} ${piece} im Weg, wie herum sie auch sitzen, um ${t.size(value)}`,
    aim: ({ piece }) => `${piece} dort mehr Luft geben oder die Verbinder versetzen`,
  },
  clash: {
    message: ({ between: [a, b], value }, t) =>
      `${t.spot(a)} und ${t.spot(b)} sind am selben Ort, ${t.size(value)} tief`,
    aim: ({ between: [a, b], by, made }, t) =>
      made.length === 0
        ? `${b.piece} oder ${a.piece} woanders anbringen`
        : `${made.join(' oder ')} dort um ${t.least(by)} kleiner machen${made.length === 1 ? ` oder ${made[0] === b.piece ? a.piece : b.piece} woanders anbringen` : ''}`,
  },
  'hinge-swing': {
    message: ({ hinge, between: [a, b], value, limit }, t) =>
      `öffnet an ${hinge} bis ${t.number(value, 1)}°, verlangt sind ${t.number(limit, 1)}°: ${t.spot(a)} trifft dann auf ${t.spot(b)}`,
    aim: ({ value }, t) => `opens: ${t.number(value, 1)} oder weniger angeben oder wegrücken, was im Weg ist`,
  },
  'weld-zinc': {
    message: ({ weld }) =>
      weld === 'spot-weld'
        ? 'verzinktes Blech: Schweißpunkte geben Zinkrauch ab und brauchen mehr Strom und Druck'
        : 'verzinktes Blech: Lochschweißungen geben Zinkrauch ab',
    aim: ({ weld }) =>
      weld === 'spot-weld'
        ? 'am Schweißpunkt absaugen und Einstellungen an Reststücken probieren oder nieten'
        : 'das Zink um das Loch entfernen und am Schweißpunkt absaugen oder nieten',
  },
  'weld-ratio': {
    message: ({ thin, thick }, t) =>
      `Bleche von ${t.size(thin)} und ${t.size(thick)} in einem Schweißpunkt, höchstens 3 zu 1`,
    aim: () => RIVET_IT,
  },
  'weld-thickness': {
    message: ({ value, least, most }, t) =>
      `ein Blech von ${t.size(value)} zum Punktschweißen, üblich sind ${t.least(least)} bis ${t.most(most)}`,
    aim: () => RIVET_IT,
  },
  'weld-stack': {
    message: ({ value }, t) => `ein Paket von ${t.size(value)}, höchstens das Vierfache des dünnsten Blechs`,
    aim: () => RIVET_IT,
  },
  'weld-schedule': {
    message: ({ material }, t) =>
      `${t.material(material)}: die Tabellen hier gelten für kohlenstoffarmen Stahl`,
    aim: ({ weldable }) => (weldable ? 'die Tabelle des Herstellers für dieses Metall nehmen' : 'nieten'),
  },
  'weld-layers': {
    message: ({ value, limit }) =>
      `${value} Bleche liegen an einem Schweißpunkt aufeinander, ${limit} sind gemeint (ein Umschlag oder eine Lasche dazwischen?)`,
    aim: () => 'den Punkt neben den Umschlag setzen oder den Umschlag ausklinken',
  },
  'weld-throat': {
    message: ({ value, limit }, t) =>
      `die Arme reichen ${t.size(limit)} über das Werkstück, der innerste Punkt braucht ${t.size(value)}`,
    aim: () => 'schweißen, bevor die Teile im Weg sind, oder nieten',
  },
  'rivet-grip': {
    message: ({ rivet, value, grips }, t) =>
      `ein Niet ${rivet} durch ${t.size(value)}, seine Längen fassen ${grips.map(([a, b]) => `${t.least(a)} bis ${t.most(b)}`).join(' und ')}`,
    aim: ({ take }) =>
      take === null
        ? 'kein Niet der Liste fasst das: dünnere Bleche oder eine andere Verbindung nehmen'
        : `einen Niet ${take} nehmen, der fasst es`,
  },
  'rivet-thin': {
    message: ({ rivet, limit }, t) =>
      `ein Niet ${rivet} in einem Blech von ${t.size(limit)}; er soll nicht dünner sein als das dickste Blech`,
    aim: ({ limit }, t) => `einen Niet von ${t.least(limit)} oder mehr nehmen`,
  },
  'rivet-layers': {
    message: ({ value, limit }) =>
      `${value} Bleche liegen an einem Niet aufeinander, ${limit} werden gebohrt`,
    aim: () => 'den Niet neben den Umschlag oder die Lasche setzen',
  },
};
