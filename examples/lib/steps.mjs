/** The steps around a kitchen's year, each from plain data to plain data. */
import {
  batchRecord,
  formatQuantity,
  labelFields,
  learnFromRecords,
  planDay,
  reviewBatch,
  StillroomError,
} from 'stillroom';
import { planProblems } from 'stillroom/plan';
import { columns, forEach, Problems } from './command.mjs';

/** The plan of a day in a file, with what was learned, if there is any. */
export function planOf(file, day, learned) {
  const input = learned === undefined ? day : { ...day, learned };
  const problems = planProblems(input);
  if (problems.length > 0)
    throw new Problems(
      file,
      problems.map(({ message }) => message),
    );
  return planDay(input);
}

/** The records of batches that were weighed and counted. */
export const recordsOf = (file, batches) => forEach(file, batches, (batch) => batchRecord(batch));

/** What the review of each record found. */
export function reviewLines(file, records, sinceProcessing) {
  const rows = forEach(file, records, (record) => ({ record, ...reviewBatch({ record, sinceProcessing }) }));
  const table = columns([
    ['lot', 'raw', 'ready', 'jars', 'verdict'],
    ...rows.map(({ record, verdict }) => [
      record.lotCode,
      ...amountsOf(record.lots[0]),
      record.jarsFilled === undefined ? '' : `${record.jarsSealed ?? '?'}/${record.jarsFilled}`,
      verdict,
    ]),
  ]);
  const found = rows.flatMap(({ record, findings }) =>
    findings.map(({ found: what, remedies, timeLeft }) => {
      const within = timeLeft === undefined ? '' : ` within ${formatQuantity(timeLeft)}`;
      return `${record.lotCode}: ${what}: ${remedies.join(', ')}${within}`;
    }),
  );
  return [...table, ...(found.length === 0 ? [] : ['', ...found])];
}

const amountsOf = ({ raw, ready }) => [formatQuantity(raw), ready === undefined ? '' : formatQuantity(ready)];

/** What the records teach, and what they do not. */
export function learn(file, records) {
  try {
    return learnFromRecords({ records });
  } catch (error) {
    if (error instanceof StillroomError) throw new Problems(file, [error.message]);
    throw error;
  }
}

const span = ({ low, high }, write) => `${write(low)} to ${write(high)}`;
const percent = (share) => `${(100 * share).toFixed(0)} %`;
const mass = (quantity) => formatQuantity(quantity, { step: 0.01 });

/** What was learned, in words. */
export const learnedLines = ({ learned, passedOver }, records) => [
  ...learned.flatMap(({ food, form, jar, n, yield: share, minutesPerPound, rawPerJar, dryingHours }) => {
    const who = `${food}${form === undefined ? '' : ` ${form}`}, ${n} ${n === 1 ? 'record' : 'records'}`;
    return [
      share && `${who}: ${span(share, percent)} of the raw mass will be ready`,
      minutesPerPound &&
        `${who}: ${span(minutesPerPound, (value) => value.toFixed(1))} min of one pair of hands a pound`,
      rawPerJar && `${who}: ${span(rawPerJar, mass)} of raw fruit a ${jar} jar`,
      dryingHours && `${who}: dry in ${span(dryingHours, (time) => `${time.value.toFixed(1)} h`)}`,
    ].filter(Boolean);
  }),
  ...passedOver.map(
    ({ index, figureName, reason }) =>
      `Nothing learned about the ${figureName} of ${records[index].lotCode}: ${reason.text}`,
  ),
];

/** The lines of each label. */
export const labelsOf = (file, labels) => forEach(file, labels, (label) => labelFields(label).labelLines);
