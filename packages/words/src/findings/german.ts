import { pathText } from '@tinwright/core';
import type { FindingGrammar } from './telling.js';

const list = (names: readonly string[]) => names.join(', ');

/** What findings share in German. */
export const GERMAN_GRAMMAR: FindingGrammar = {
  severity: { error: 'Fehler', warning: 'Warnung', note: 'Hinweis' },
  joints: (names) => `${names.length === 1 ? 'Verbindung' : 'Verbindungen'} ${list(names)}: `,
  others: (names) => `; auch ${list(names)}`,
  places: (count) => `; an ${count} weiteren Stellen`,
  there: (count) => `; dort noch ${count}`,
  and: 'und',
  or: ', oder ',
  spot: ({ piece, panel, what }) => (what === 'bend' ? `Kantung ${panel} von ${piece}` : `${piece}.${panel}`),
  change: (change, t) => {
    const name = pathText(change.path);
    if ('words' in change) return `${name}: ${change.words[0]} setzen`;
    return `${name} auf ${t.size(change.found)} oder ${change.bound === 'most' ? 'weniger' : 'mehr'} ändern`;
  },
  basis: {
    computed: 'aus den gekanteten Teilen berechnet',
    derived: 'hergeleitet',
    judgement: 'nach Ermessen',
    memory: 'aus dem Gedächtnis',
    'common-practice': 'übliche Praxis, ohne Quelle',
    'second-hand': 'aus zweiter Hand',
    stricter: 'das Strengere genommen',
  },
  kinds: {
    'shop-file': 'Werkstattdatei',
    job: 'der Auftrag',
    joints: 'die Verbindungen des Auftrags',
    measured: 'die gemessenen Maße',
    'design-guide': 'einer Konstruktionsrichtlinie',
    'design-guides': 'Konstruktionsrichtlinien',
    'cautious-guides': 'vorsichtigen Konstruktionsrichtlinien',
    fabricator: 'der Richtlinie eines Blechbetriebs',
    fabricators: 'Seiten von Blechbetrieben',
    'general-practice': 'allgemeiner Praxis',
    'makers-tables': 'Herstellertabellen',
    'brake-manual': 'dem gedruckten Handbuch einer Abkantbank von 4 Fuß',
    planner: 'jede Reihenfolge an den Maschinen der Werkstatt probiert',
  },
  by: (rule, work) => `${rule} nach ${work}`,
  profile: { strict: 'Profil strict', usual: 'Profil usual' },
  assumed: (paths) =>
    `in der Werkstattdatei nicht angegeben, daher nach Ermessen oder aus dem Gedächtnis angenommen: ${list(paths)}`,
};
