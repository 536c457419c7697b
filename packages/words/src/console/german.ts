import { frozen } from '@tinwright/core/internal';
import type { ConsoleWords } from './words.js';

const many = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;

const foundWords = (findings: number): string =>
  findings === 0 ? 'nichts zu beachten' : many(findings, 'Befund', 'Befunde');

/** What a terminal says in German. */
export const CONSOLE_GERMAN: ConsoleWords = frozen({
  sheet: (n: number) => `Tafel ${n}`,
  blanks: (n: number) => many(n, 'Zuschnitt', 'Zuschnitte'),
  parts: (n: number) => many(n, 'Teil', 'Teile'),
  used: (share: string) => `${share} genutzt`,
  ofSheet: (share: string) => `${share} der Tafel`,
  upTo: (to: string, of: string) => `bis ${to} von ${of}`,
  offcut: (size: string) => `Reststück ${size}`,
  noOffcut: 'kein Reststück',
  cuts: (cuts: number, settings: number) =>
    `${many(cuts, 'Schnitt', 'Schnitte')}, Anschlag ${settings}-mal eingestellt.`,
  usualSheets: (sizes: readonly string[]) =>
    `Weder --rack noch Auftrag noch Werkstatt sagen, welche Tafeln es gibt: geschnitten aus beliebig vielen von ${sizes.join(', ')}.`,
  open: (file: string) => `Öffne ${file}.`,
  blank: (size: string) => `Zuschnitt ${size}`,
  filesIn: (n: number, folder: string, open: string) =>
    `${many(n, 'Datei', 'Dateien')} in ${folder}: ${open} im Browser öffnen.`,
  notWritten: 'Nichts geschrieben: ein Befund ist ein Fehler.',
  writtenAll: 'Geschrieben, aber ein Befund ist ein Fehler.',
  sheetsIn: (n: number, folder: string) => `${many(n, 'Tafel', 'Tafeln')} in ${folder}.`,
  torch: ({ length, spared, pierces, starts, minutes }) =>
    `${length} Schnitt, ${spared} durch gemeinsame Schnitte gespart, ${many(pierces, 'Einstich', 'Einstiche')}, ${many(starts, 'Ansatz', 'Ansätze')} in einem früheren Schnitt, etwa ${minutes}`,
  soFar: (sheets: number, seed: number) => `bisher ${many(sheets, 'Tafel', 'Tafeln')} (Startzahl ${seed})`,
  ending: 'hört auf, das Beste bis hier bleibt.',
  fix: 'Abhilfe',
  job: 'Auftrag',
  fit: {
    joint: 'Verbindung',
    asked: 'verlangtes Spiel',
    found: 'gefunden',
    between: 'zwischen',
    clear: 'frei',
    and: 'und',
  },
  checked: (parts, pieces, findings) =>
    `${many(parts, 'Teil', 'Teile')}, ${pieces} Stück: ${foundWords(findings)}.`,
  checkedSize: (size, findings, errors) =>
    `Größe ${size}: ${foundWords(findings)}${errors === 0 ? '' : `, davon ${many(errors, 'Fehler', 'Fehler')}`}.`,
  order: {
    shop: (shop) => `In ${shop ?? 'der Werkstatt'}. Links und rechts gelten, wie man vor der Maschine steht.`,
    helps: (mend) => `würde helfen: ${mend}`,
    machines: { brake: 'Abkantbank', press: 'Presse', vise: 'Schraubstock', hand: 'von Hand' },
    force: (formula) => `Kraft: ${formula}`,
    batch: (together, apart) =>
      `Alle Teile zusammen: ${together} zum Einrichten; ein Teil nach dem anderen ${apart}.`,
    to: 'bis',
    changes: {
      machine: 'zur Maschine gehen',
      tools: 'Werkzeuge rüsten',
      stop: 'Winkel einstellen',
      'set-back': 'Segmente zurücksetzen',
      gauge: 'Anschlag einstellen',
    },
  },
  family: {
    follow: (written) => `Maße, denen andere Teile folgen können, als ${written}:`,
    sites: (names) => `Stellen zum Verbinden: ${names}`,
    starter: (command) => `Ein Auftrag zum Anfangen: ${command}`,
  },
});
