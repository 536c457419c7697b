import { JobError, type Point, type Problem, paramKit, problemsOf, quoted } from '@tinwright/core';
import { twinProblems } from './names.js';
import { shopSchema } from './schema.js';
import type { Brake, Press, Shop } from './shop.js';

/**
 * Read a shop from plain data, as a YAML or JSON parser gives it.
 * @throws JobError with every problem found, in the order of the file
 */
export function readShop(data: unknown): Shop {
  const units = (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';
  const read = shopSchema(paramKit(units)).safeParse(data);
  if (!read.success) throw new JobError(problemsOf(read.error.issues, data));
  const shop = read.data as Shop;
  const problems = [
    ...(shop.brake === null ? [] : brakeProblems(shop.brake)),
    ...(shop.press === null ? [] : pressProblems(shop.press)),
    ...twins(shop),
  ];
  if (problems.length > 0) throw new JobError(problems);
  return shop;
}

function brakeProblems(brake: Brake): readonly Problem[] {
  const { length, fingers, finger, setBack } = brake;
  const wrong = (path: Problem['path'], message: string, fix: string): Problem => ({
    code: 'shop-impossible',
    path: ['brake', ...path],
    message,
    fix,
  });
  return [
    ...fingers.flatMap((f, i) =>
      f > length ? [wrong(['fingers', i], `${f} mm given, wider than the brake of ${length} mm`, '')] : [],
    ),
    ...(finger.upright >= finger.foot
      ? [
          wrong(
            ['finger', 'upright'],
            `${finger.upright} mm given, behind the heel of a foot of ${finger.foot} mm`,
            'Measure from the tip back to the front of the upright',
          ),
        ]
      : []),
    ...((setBack[0] as number) > (setBack[1] as number)
      ? [wrong(['setBack'], `${setBack.join(' to ')} given, least first allowed`, '')]
      : []),
  ];
}

function pressProblems(press: Press): readonly Problem[] {
  const tools = [
    ...press.punches.map((t, i) => ({ path: ['press', 'punches', i, 'section'], t, up: true })),
    ...press.dies.map((t, i) => ({ path: ['press', 'dies', i, 'section'], t, up: false })),
  ];
  return [
    ...tools.flatMap(({ path, t }): readonly Problem[] =>
      crossesItself(t.section)
        ? [
            {
              code: 'shop-impossible',
              path,
              message: `the section of ${quoted(t.name)} crosses itself`,
              fix: 'Give its corners in order, once round',
            },
          ]
        : [],
    ),
    ...press.punches.flatMap((p, i): readonly Problem[] =>
      p.lengths.some((l) => l > press.length)
        ? [
            {
              code: 'shop-impossible',
              path: ['press', 'punches', i, 'lengths'],
              message: `a punch longer than the press of ${press.length} mm`,
              fix: '',
            },
          ]
        : [],
    ),
  ];
}

/** Strips, punches or dies of the same name. */
const twins = (shop: Shop): readonly Problem[] => [
  ...twinProblems(['press', 'punches'], shop.press?.punches ?? []),
  ...twinProblems(['press', 'dies'], shop.press?.dies ?? []),
  ...twinProblems(['strips'], shop.strips),
];

function crossesItself(section: readonly Point[]): boolean {
  const n = section.length;
  const at = (i: number) => section[i % n] as Point;
  const side = (a: Point, b: Point, c: Point) =>
    (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  for (let i = 0; i < n; i++)
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue; // neighbours
      const [a, b, c, d] = [at(i), at(i + 1), at(j), at(j + 1)];
      if (side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0) return true;
    }
  return false;
}
