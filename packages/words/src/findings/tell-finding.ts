import type { CoreFindings, Finding, Severity, Source, SourceKind, Spot, Unit, Where } from '@tinwright/core';
import { inWords, plainNumber, sayIn } from '@tinwright/core/internal';
import type { CuttingFindings } from '@tinwright/cutting';
import type { ShopFindings } from '@tinwright/shop';
import { inDecimal, sayOf } from '../decimal.js';
import type { Language } from '../language.js';
import { materialName } from '../materials.js';
import { ENGLISH_GRAMMAR } from './english.js';
import { ENGLISH_CORE } from './english-core.js';
import { ENGLISH_CUTTING } from './english-cutting.js';
import { ENGLISH_SHOP } from './english-shop.js';
import { GERMAN_GRAMMAR } from './german.js';
import { GERMAN_CORE } from './german-core.js';
import { GERMAN_CUTTING } from './german-cutting.js';
import { GERMAN_SHOP } from './german-shop.js';
import type { FindingGrammar, SeenFinding, Telling, Tellings, Tongue } from './telling.js';

/** A finding in words. */
export interface ToldFinding extends Omit<Finding, 'source' | 'where' | 'values' | 'words'> {
  /** On the flat of the part, mm; null where no place shows it. */
  readonly at: Where['at'];
  readonly message: string;
  /** Where the limit comes from. */
  readonly source: string;
  /** The change that would pass. */
  readonly fix: string;
}

const TELLINGS: Readonly<Record<Language, Tellings<CoreFindings & ShopFindings & CuttingFindings>>> = {
  en: { ...ENGLISH_CORE, ...ENGLISH_SHOP, ...ENGLISH_CUTTING },
  de: { ...GERMAN_CORE, ...GERMAN_SHOP, ...GERMAN_CUTTING },
};
const GRAMMARS: Readonly<Record<Language, FindingGrammar>> = { en: ENGLISH_GRAMMAR, de: GERMAN_GRAMMAR };
const NAMED = 3; // further places told by name, more are counted

/**
 * A finding in the words of a language and a unit; its numbers stay mm. One of an unknown code is told in the words it
 * brings along.
 */
export function tellFinding(finding: Finding, unit: Unit, language: Language): ToldFinding {
  const grammar = GRAMMARS[language];
  const tongue = tongueOf(unit, language, grammar);
  const telling = Object.entries(TELLINGS[language]).find(([code]) => code === finding.code)?.[1];
  const told =
    telling === undefined
      ? { message: finding.words?.message ?? finding.code, fix: finding.words?.fix ?? '' }
      : wordsOf(finding, telling as Telling<object>, grammar, tongue);
  const source = finding.words?.source ?? sourceWords(finding.source, unit, language);
  const { code, severity, part, where, value, limit, unit: of, changes } = finding;
  return { code, severity, part, at: where.at, value, limit, unit: of, ...told, source, changes };
}

/** Findings in words, in their order. */
export const tellFindings = (
  findings: readonly Finding[],
  unit: Unit,
  language: Language,
): readonly ToldFinding[] => findings.map((f) => tellFinding(f, unit, language));

/** How grave a finding is, in a word. */
export const severityWord = (severity: Severity, language: Language): string =>
  GRAMMARS[language].severity[severity];

/** A panel or a bend of a piece in words. */
export const spotWords = (spot: Spot, language: Language): string => GRAMMARS[language].spot(spot);

/** A finding in words as files and programs get it: what it has none of is left out. Lengths mm. */
export function findingEntry(told: ToldFinding): object {
  const { code, severity, part, at, value, limit, unit, message, source, fix } = told;
  return {
    code,
    severity,
    part,
    ...(at === null ? {} : { at }),
    ...(value === null ? {} : { value }),
    ...(limit === null ? {} : { limit }),
    ...(unit === null ? {} : { unit }),
    message,
    source,
    fix,
  };
}

function tongueOf(unit: Unit, language: Language, { spot }: FindingGrammar): Tongue {
  const say = sayIn(unit);
  return {
    ...sayOf(unit, language),
    number: (value, digits) => inDecimal(plainNumber(value, digits), language),
    material: (name) => materialName({ name }, language),
    worded: (wording) => inWords(wording, say),
    spot,
  };
}

function wordsOf(finding: Finding, telling: Telling<object>, grammar: FindingGrammar, tongue: Tongue) {
  const { where, value, limit, severity, values, changes } = finding;
  const seen: SeenFinding<object> = {
    ...values,
    value: value ?? 0,
    limit: limit ?? 0,
    severity,
    names: where.names,
  };
  const joints = where.joints.length === 0 ? '' : grammar.joints(where.joints);
  const message = `${joints}${telling.message(seen, tongue)}${othersOf(finding, grammar)}`;
  const aim = telling.aim?.(seen, tongue);
  const remedy = telling.remedy?.(seen, tongue);
  const found = changes.map((c) => grammar.change(c, tongue));
  const first = found.length > 0 || aim === undefined ? found : [aim];
  return { message, fix: [...first, ...(remedy === undefined ? [] : [remedy])].join(grammar.or) };
}

function othersOf(
  { where: { names: own, others } }: Finding,
  { others: also, places, there, and }: FindingGrammar,
) {
  if (others.length === 0) return '';
  const joined = (names: readonly string[]) => names.join(` ${and} `);
  const names = [...new Set(others.map(joined))].filter((n) => n !== joined(own));
  if (names.length === 0) return there(others.length);
  return names.length > NAMED ? places(names.length) : also(names);
}

/** Sources in words: what each asks for, who says so, and how sure that is. */
export function sourceWords(sources: readonly Source[], unit: Unit, language: Language): string {
  const grammar = GRAMMARS[language];
  const { size } = tongueOf(unit, language, grammar);
  return sources.map((s) => sourceText(s, grammar, size)).join('; ');
}

function sourceText(source: Source, grammar: FindingGrammar, size: (mm: number) => string): string {
  const { rule, work, basis, profile, assumed } = source;
  if (assumed.length > 0) return grammar.assumed(assumed);
  const name = work === null ? null : (grammar.kinds[work as SourceKind] ?? work);
  const number = source.size === null ? null : size(source.size);
  const asks = number === null || rule?.includes('#') !== true ? rule : rule.replace('#', number);
  const what = asks === null || name === null ? (asks ?? name) : grammar.by(asks, name);
  const parts = [what, asks === rule ? number : null, basis === null ? null : grammar.basis[basis]];
  const text = parts.filter((p) => p !== null).join(', ');
  return profile === null ? text : `${text} (${grammar.profile[profile]})`;
}
