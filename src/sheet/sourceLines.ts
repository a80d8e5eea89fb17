import type { FeasibleDay } from '../plan/request/dayPlan';
import type { Basis } from '../sources/basis';
import { source } from '../sources/source';
import { letter } from './clock';
import { say, type Text } from './words';

/** The most places of one source that are named: the rest stand in the plan's `basis`. */
const MOST_PLACES = 4;

const SEEN: Readonly<Record<NonNullable<Basis['seen']>, Text>> = {
  original: 'seen.original',
  reproduction: 'seen.reproduction',
  citation: 'seen.citation',
};

/** The sources by the letters of the products that rest on them, first those of the process times. */
export function sourcesOf(plan: FeasibleDay): string[] {
  const { products, basis } = plan;
  const processes = new Map<string, string[]>();
  products.forEach(({ canning: jars, basis: lines }, index) => {
    const line = lines.find(({ of, source: id }) => of === 'canning' && id !== undefined);
    if (jars === undefined || line?.source === undefined) return;
    const text = say('source.process', {
      letter: letter(index),
      minutes: jars.minutes,
      locator: line.locator ?? '',
    });
    processes.set(line.source, [...(processes.get(line.source) ?? []), text]);
  });
  const cited = [...new Set(basis.flatMap((line) => (line.source === undefined ? [] : [line.source])))].sort();
  const first = cited.filter((id) => processes.has(id));
  const notes = (kind: Basis['kind']) => [
    ...new Set(basis.filter((line) => line.kind === kind).map(({ of, note = of }) => note)),
  ];
  const [practice, recalled] = [notes('common-practice'), notes('recalled')];
  return [
    ...first.map((id) => lineOf(plan, id, processes.get(id))),
    ...cited.filter((id) => !processes.has(id)).map((id) => lineOf(plan, id)),
    ...(practice.length === 0 ? [] : [say('source.practice', { notes: practice.join('; ') })]),
    ...(recalled.length === 0 ? [] : [say('source.recalled', { notes: recalled.join('; ') })]),
  ];
}

function lineOf({ products, basis }: FeasibleDay, id: string, processes?: readonly string[]): string {
  const letters = products.flatMap(({ basis: lines }, index) =>
    lines.some((line) => line.source === id) ? [letter(index)] : [],
  );
  const all = basis.filter((line) => line.source === id);
  const places = [...new Set(all.flatMap(({ locator }) => (locator === undefined ? [] : [locator])))];
  const seen = all.find((line) => line.seen !== undefined)?.seen;
  return say('source.line', {
    letters: processes?.join(say('comma')) ?? (letters.length === 0 ? say('letters.day') : letters.join(' ')),
    title: titleOf(id),
    locators:
      processes !== undefined || places.length > MOST_PLACES ? '' : say('source.places', { places: places.join('; ') }),
    seen: seen === undefined ? '' : say(SEEN[seen]),
  });
}

/** Title and year as the register has them; its publisher stands there too. */
function titleOf(id: string): string {
  const { title, year } = source(id);
  return year === undefined ? title : `${title}, ${year}`;
}
