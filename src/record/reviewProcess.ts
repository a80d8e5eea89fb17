/** What a record says of its heat process, compared with the tested one. */
import { within } from '../errors/StillroomError';
import { canningRules } from '../process/canningRules';
import { type TestedProcess, testedProcess } from '../process/testedProcess';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import type { NotTested } from '../sources/no';
import type { BatchRecord } from './batchRecord';
import { behind } from './behind';
import type { RuleBroken } from './findings';
import { written } from './written';

type Process = NonNullable<BatchRecord['process']>;
interface Line {
  readonly minutes: number;
  readonly pressure?: Quantity<'pressure'>;
  readonly sterilizeJars: boolean;
}

/** The tested process for what the record names. */
export const testedFor = ({ food, form, pack, jar, method, elevation }: Process): TestedProcess | NotTested =>
  within('record.process', () => testedProcess({ food, form, pack, jar, method, elevation }));

const psi = (pressure: Quantity<'pressure'>): number => valueIn(pressure, 'psi');
/** A part in a million million for the conversion of units. */
const NEAR = 1e-9;
const isPressure = ({ method }: Process): boolean => method === 'dial-gauge' || method === 'weighted-gauge';
const said = (quantity: { readonly value: number; readonly unit: string }): string => written(quantity, { step: 0.01 });

/** The pressure that held to the end: the lowest one read, unless the whole time was started again. */
function heldPressure({ pressure, lowestPressure, restarted }: Process): Quantity<'pressure'> | undefined {
  if (lowestPressure === undefined || restarted === true) return pressure;
  if (pressure === undefined) return lowestPressure;
  return psi(lowestPressure) < psi(pressure) ? lowestPressure : pressure;
}

function reviewMinutesAndPressure(process: Process, lines: readonly Line[], basis: readonly Basis[]): RuleBroken[] {
  const held = heldPressure(process);
  const full = (line: Line, at = held) =>
    line.pressure === undefined || (at !== undefined && psi(at) >= psi(line.pressure) - NEAR);
  const long = (line: Line) => process.minutes >= line.minutes;
  if (lines.some((line) => full(line) && long(line))) return [];
  const atPressure = lines.filter((line) => full(line));
  const line = (atPressure[0] ?? lines[0]) as Line;
  const broken: RuleBroken[] = [];
  if (atPressure.length === 0) {
    const wanted = `at least ${said(line.pressure as Quantity<'pressure'>)} for ${line.minutes} min`;
    if (held === undefined) {
      return [
        {
          id: 'pressure-not-recorded',
          kind: 'missing',
          field: 'process.pressure',
          found: 'no pressure',
          wanted,
          basis,
        },
      ];
    }
    const dropped = full(line, process.pressure);
    const field = dropped || process.pressure === undefined ? 'process.lowestPressure' : 'process.pressure';
    broken.push({
      id: dropped ? 'pressure-dropped' : 'pressure-too-low',
      kind: 'mistake',
      field,
      found: said(held),
      wanted,
      basis,
    });
  }
  if (!long(line)) {
    const wanted = `at least ${line.minutes} min`;
    broken.push({
      id: 'process-too-short',
      kind: 'mistake',
      field: 'process.minutes',
      found: `${process.minutes} min`,
      wanted,
      basis,
    });
  }
  return broken;
}

const AGENTS = ['bottledLemonJuice', 'citricAcid', 'vinegar'] as const;
const AGENT_WORDS = {
  bottledLemonJuice: 'bottled lemon juice',
  citricAcid: 'citric acid',
  vinegar: 'vinegar',
} as const;

function reviewAcid({ acid }: Process, tested: TestedProcess): RuleBroken[] {
  const needed = tested.acid;
  if (needed === undefined) return [];
  const basis = behind('wanted', tested.basis);
  const broken = (rule: string, found: string): RuleBroken[] => [
    { id: rule, kind: 'mistake', field: 'process.acid', found, wanted: needed.text, basis },
  ];
  if (acid === undefined) return broken('acid-missing', 'no acid');
  if (acid.asInRecipe === true) return [];
  const given = AGENTS.filter((agent) => acid[agent] !== undefined);
  if (given.length === 0) return broken('acid-missing', 'no acid');
  if (needed.where === 'recipe') {
    return [
      {
        ...(broken('acid-not-confirmed', 'amounts') as [RuleBroken])[0],
        kind: 'missing',
        wanted: `asInRecipe: true, when it was ${needed.text}`,
      },
    ];
  }
  const enough = given.some((agent) => {
    const least = needed[agent];
    return least !== undefined && valueIn(acid[agent] as Quantity<'volume'>, 'mL') >= valueIn(least, 'mL') - NEAR;
  });
  const list = given.map((agent) => `${written(acid[agent] as Quantity)} of ${AGENT_WORDS[agent]}`).join(', ');
  return enough ? [] : broken('acid-too-little', list);
}

/** A rule of running the canner, as the process module prints it. */
function canningRule(name: string) {
  return canningRules().rules.find(({ id }) => id === name) as ReturnType<typeof canningRules>['rules'][number];
}

function reviewRunning(process: Process, lines: readonly Line[]): RuleBroken[] {
  const broken: RuleBroken[] = [];
  const { interrupted, restarted, vented, sterilizedJars } = process;
  if (interrupted === true && restarted !== true) {
    const rule = canningRule(isPressure(process) ? 'restart' : 'boil-start-timing');
    const found = isPressure(process)
      ? 'pressure was lost and the time was not started again'
      : 'the boil stopped and the time was not started again';
    const name = isPressure(process)
      ? 'pressure-dropped'
      : process.method === 'boiling-water'
        ? 'boil-stopped'
        : 'steam-stopped';
    broken.push({
      id: name,
      kind: 'mistake',
      field: 'process.interrupted',
      found,
      wanted: rule.text,
      basis: behind('wanted', rule.basis),
    });
  }
  if (isPressure(process)) {
    const rule = canningRule('vent');
    const wanted = `${rule.low} min`;
    if (vented === undefined) {
      broken.push({
        id: 'venting-not-recorded',
        kind: 'missing',
        field: 'process.vented',
        found: 'nothing',
        wanted,
        basis: behind('wanted', rule.basis),
      });
    } else if (valueIn(vented, 'min') < (rule.low as number) - NEAR) {
      broken.push({
        id: 'vented-too-short',
        kind: 'mistake',
        field: 'process.vented',
        found: said(vented),
        wanted,
        basis: behind('wanted', rule.basis),
      });
    }
  }
  // a longer line of the same process may need no sterilized jars
  const sterile = lines.every((line) => line.sterilizeJars || process.minutes < line.minutes);
  if (sterile && lines.some((line) => line.sterilizeJars) && sterilizedJars !== true) {
    const rule = canningRule('sterilize');
    const kind = sterilizedJars === false ? 'mistake' : 'missing';
    const found = sterilizedJars === false ? 'not sterilized' : 'nothing';
    broken.push({
      id: kind === 'mistake' ? 'jars-not-sterilized' : 'sterilizing-not-recorded',
      kind,
      field: 'process.sterilizedJars',
      found,
      wanted: 'sterilized jars',
      basis: behind('wanted', rule.basis),
    });
  }
  return broken;
}

function reviewSteam(record: BatchRecord, tested: TestedProcess): RuleBroken[] {
  const { steamTemperature } = tested;
  if (steamTemperature === undefined) return [];
  return (record.temperatures ?? []).flatMap(({ where, temperature }, index): RuleBroken[] => {
    // a degree: what a kitchen thermometer can be off, and less than the weather moves the boiling point
    const cool = valueIn(temperature, 'degF') < valueIn(steamTemperature, 'degF') - 1;
    if (where !== 'canner' || !cool) return [];
    return [
      {
        id: 'steam-too-cool',
        kind: 'mistake',
        field: `temperatures[${index}]`,
        found: said(temperature),
        wanted: `${said(steamTemperature)} the whole time`,
        basis: behind('wanted', canningRule('steam-start-timing').basis),
      },
    ];
  });
}

/** The rules of the heat process that a record breaks, and the process it is compared with. */
export function reviewProcess(record: BatchRecord): {
  broken: RuleBroken[];
  tested?: TestedProcess | NotTested;
  cautions: readonly Caution[];
} {
  const { process } = record;
  if (process === undefined) return { broken: [], cautions: [] };
  const tested = testedFor(process);
  const { cautions } = tested;
  const basis = behind('wanted', tested.basis);
  if (!tested.tested) {
    const { reason, instead } = tested;
    const broken: RuleBroken = {
      id: 'no-tested-process',
      kind: 'untested',
      field: 'process',
      found: reason.text,
      wanted: instead
        .slice(0, 2)
        .map(({ text }) => text)
        .join(', or '),
      basis,
    };
    return { broken: [broken], tested, cautions };
  }
  const lines: readonly Line[] = tested.alternatives ?? [tested];
  const broken = [
    ...reviewMinutesAndPressure(process, lines, basis),
    ...reviewAcid(process, tested),
    ...reviewRunning(process, lines),
    ...reviewSteam(record, tested),
  ];
  return { broken, tested, cautions };
}
