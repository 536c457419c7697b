import { frozen } from '@tinwright/core/internal';
import type { StepWords } from './words.js';

/** What step pictures say in English. */
export const STEPS_ENGLISH: StepWords = frozen({
  language: 'en',
  title: (part, n, of) => `${part}, step ${n} of ${of}`,
  alt: (what) => `${what}: cross-section before and after, and the part as it lies in the machine`,
  before: 'Before',
  after: 'After',
  seen: (scale) => `, ${scale}, seen from your left`,
  detail: (scale) => `At the bend line, ${scale}`,
  lying: 'You stand at the lower right. Thick: turns. Hatched: held',
  lies: 'As it lies',
  held: (panel, { machine, action, clamp, held, touches }) =>
    `${panel}: ${{ brake: action === 'close' ? 'on the bed' : 'clamped', press: action === 'close' ? 'on the table' : touches?.panel === held ? 'at the gauge' : 'on the die', vise: 'clamped', hand: clamp === 'seamer' ? 'lies still' : 'held' }[machine]}`,
  turns: (panel, { action, clamp }) =>
    `${panel}: ${action === 'close' ? 'is pressed flat' : clamp === 'seamer' ? 'turns with the seamer' : 'turns'}`,
  tools: {
    fingers: 'finger',
    beam: 'beam',
    bed: 'bed',
    leaf: 'leaf',
    punch: 'punch',
    ram: 'ram',
    die: 'die',
    gauge: 'back gauge',
    stop: 'rear stop',
    bar: 'bar',
    table: 'table',
    bench: 'bench',
    mallet: 'mallet',
    jaw: 'jaw',
    block: 'block',
    batten: 'batten',
  },
  rolled: {
    wired: { stages: ['1 Turn the edge up', '2 Lay the wire in', '3 Close it'], core: 'wire' },
    curl: { stages: ['1 Turn the edge up', '2 Lay a rod in', '3 Roll, rod out'], core: 'rod' },
  },
  setBackHere: (size) => `set-back ${size}`,
  sightHere: 'sight line under this edge',
  openingHere: (size) => `V ${size}`,
  row: (tools, end, unit) =>
    `${tools === 'fingers' ? 'Fingers' : 'Tools'} from the front, not to scale: ${unit} from the ${end} end of the bend`,
  caution: {
    brake:
      "Caution: hands clear of fingers and leaf, and of the leaf's handles and weights as it swings. Follow the machine's manual.",
    press:
      "Caution: no hand between punch and die, none where the sheet swings up. Follow the machine's manual.",
    vise: 'Caution: sharp edges; protect your eyes, and mind your fingers under the hammer.',
    hand: 'Caution: sharp edges; protect your eyes, and mind your fingers under the hammer.',
  },
});
