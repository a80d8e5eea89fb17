import { formatQuantity } from '../quantity/formatQuantity';
import { parseQuantity } from '../quantity/parseQuantity';
import type { Quantity } from '../quantity/types';
import type { Caution } from '../sources/basis';
import { processCaution } from './cautions';
import { type AcidRow, acidRows, LISTED_JARS, type ListedJar } from './tables';

/** The acid that a process requires. It belongs to the process: without it the minutes do not hold. */
export interface ProcessAcid {
  /** Always: the process does not hold without it. */
  readonly required: true;
  /** Whether the amounts go into each jar, or are part of the recipe. */
  readonly where: 'each jar' | 'recipe';
  /** `one`: any one of the named agents. `all`: every one. */
  readonly choose: 'one' | 'all';
  /** Bottled lemon juice. */
  readonly bottledLemonJuice?: Quantity<'volume'>;
  /** Citric acid. */
  readonly citricAcid?: Quantity<'volume'>;
  /** Vinegar of 5% acidity. */
  readonly vinegar?: Quantity<'volume'>;
  /** What the amounts are for, where it is not a jar. */
  readonly amountsFor?: string;
  /** Other bottled juice that may take the place of the acid named, in the same amount. */
  readonly standIn?: readonly string[];
  /** Acid that never takes its place. */
  readonly noStandIn?: readonly string[];
  /** The whole requirement in words. */
  readonly text: string;
}

/** Eighths and thirds are both printed: 2 2/3 cups never reads as 2 5/8. */
const fractionOf = (value: number): 3 | 8 => (Number.isInteger(value * 8) ? 8 : 3);
const AGENTS = [
  ['bottledLemonJuice', 'bottled lemon juice'],
  ['citricAcid', 'citric acid'],
  ['vinegar', 'vinegar (5 % acidity)'],
] as const;

/** The row of an acid (the `acid` of a process row) for a listed jar size. */
export const acidRowOf = (id: string, jar: ListedJar): AcidRow | undefined =>
  acidRows.find((row) => row.acid === id && (row.jar === undefined || row.jar === jar));

/** The listed sizes that a process's acid is printed for; every size where it is the same in all. */
export const acidSizes = (id: string): readonly ListedJar[] =>
  LISTED_JARS.filter((jar) => acidRowOf(id, jar) !== undefined);

/** The acid of a row as an answer holds it. */
export function acidOf(row: AcidRow): ProcessAcid {
  const amounts = AGENTS.flatMap(([field, words]) => {
    const amount = row[field];
    if (amount === undefined) return [];
    const quantity = parseQuantity(amount, 'volume', field);
    return [
      { field, quantity, text: `${formatQuantity(quantity, { fraction: fractionOf(quantity.value) })} of ${words}` },
    ];
  });
  const agents = amounts.map(({ text }) => text).join(row.choose === 'one' ? ', or ' : ' and ');
  const per = row.where === 'each jar' ? 'to each jar' : row.per === undefined ? '' : `per ${row.per}`;
  const standIn = row.standIn === undefined ? '' : `${row.standIn.join(' or ')} may take its place, in the same amount`;
  const never = row.noStandIn === undefined ? '' : `never ${row.noStandIn.join(' or ')} in its place`;
  const parts = [[agents, per].filter((part) => part !== '').join(' '), standIn, never, row.also].filter(
    (part) => part,
  );
  return {
    required: true,
    where: row.where,
    choose: row.choose,
    ...Object.fromEntries(amounts.map(({ field, quantity }) => [field, quantity])),
    ...(row.per === undefined ? {} : { amountsFor: row.per }),
    ...(row.standIn === undefined ? {} : { standIn: row.standIn }),
    ...(row.noStandIn === undefined ? {} : { noStandIn: row.noStandIn }),
    text: parts.join('; '),
  };
}

/** The same as a caution, so that it is said twice. */
export function acidCaution(acid: ProcessAcid): Caution {
  const usual = processCaution('acid-required');
  return { ...usual, text: `Required acid: ${acid.text}. ${usual.text}` };
}
