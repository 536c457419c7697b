import { type Document, isCollection, isMap, isScalar, isSeq, LineCounter, visit } from 'yaml';
import type { JobPath } from '../protocol.js';
import { checkStructure, dataOf, documentOf } from '../text/text-structure.js';

/** Longest text of a job that is read here, characters. */
export const LONGEST_TEXT = 200_000;

/** A job's text as read: its data, or what is wrong with the text. */
export interface ReadJob {
  readonly data: unknown;
  readonly problem: { readonly line: number; readonly message: string } | null;
}

/** Read the text of a job, YAML or JSON: what the command does not read is not read here. */
export function readText(text: string): ReadJob {
  if (text.length > LONGEST_TEXT)
    return refused(1, `${text.length} characters given, ${LONGEST_TEXT} allowed`);
  const zero = text.indexOf('\0');
  if (zero >= 0) return refused(text.slice(0, zero).split('\n').length, 'a zero byte, which is no text');
  const lines = new LineCounter();
  try {
    const document = documentOf(text, lines);
    const [slip] = slipsOf(document);
    if (slip !== undefined) return refused(lines.linePos(slip.offset).line, slip.message);
    return { data: dataOf(document), problem: null };
  } catch (error) {
    return refused(1, error instanceof Error ? error.message : '');
  }
}

const refused = (line: number, message: string): ReadJob => ({ data: null, problem: { line, message } });

/** What is wrong with a text, in the order it stands there. */
function slipsOf(document: Document): readonly { readonly offset: number; readonly message: string }[] {
  const found = document.errors.map(({ pos, message }) => ({ offset: pos[0], message }));
  if (found.length === 0) checkStructure(document, (offset, _, message) => found.push({ offset, message }));
  return found;
}

/** The text with a value changed, everything else and every comment as it stands; undefined takes the value out. */
export function withChange(text: string, path: JobPath, value: unknown): string {
  return edited(text, (document) => {
    if (value === undefined) document.deleteIn(path);
    else {
      // a list or a group that is not there yet becomes one
      for (let i = 1; i < path.length; i++) {
        const above = path.slice(0, i);
        if (!isCollection(document.getIn(above, true)))
          document.setIn(above, document.createNode(typeof path[i] === 'number' ? [] : {}));
      }
      document.setIn(path, typeof value === 'object' ? document.createNode(value) : value);
    }
  });
}

/** The text with several values changed in one go. */
export function withChanges(
  text: string,
  changes: readonly { readonly path: JobPath; readonly value: unknown }[],
): string {
  return edited(text, (document) => {
    for (const { path, value } of changes) document.setIn(path, value);
  });
}

/** The text with something put at the end of a list. */
export function withAdded(text: string, path: JobPath, value: unknown): string {
  return edited(text, (document) => document.addIn(path, document.createNode(value)));
}

/** The text without a part and the joints it has; sizes that follow it stay and are told of. */
export function withoutPart(text: string, index: number): string {
  return edited(text, (document) => {
    const name = document.getIn(['parts', index, 'name']);
    const joints = document.get('joints');
    document.deleteIn(['parts', index]);
    if (!isSeq(joints)) return;
    const { items } = joints;
    // a piece is called by its part's name, with a number where there are several: `end-2.rim`
    const ofPart = (joint: unknown) =>
      isMap(joint) &&
      joint.items.some(({ value }) => {
        const said = isScalar(value) ? String(value.value) : '';
        return (
          said.startsWith(`${name}.`) ||
          (said.startsWith(`${name}-`) && /^-\d+\./.test(said.slice(`${name}`.length)))
        );
      });
    joints.items = items.filter((joint) => !ofPart(joint));
    if (joints.items.length === 0) document.delete('joints');
  });
}

function edited(text: string, change: (document: Document.Parsed) => void): string {
  const document = documentOf(text);
  writeOut(document);
  change(document);
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}

/** Values in the place of the aliases that stand for them: what is changed or goes is then in one place alone. */
function writeOut(document: Document.Parsed): void {
  visit(document, { Alias: (_, alias) => alias.resolve(document)?.clone() as typeof alias | undefined });
  visit(document, {
    Value: (_, node) => {
      delete node.anchor;
    },
  });
}
