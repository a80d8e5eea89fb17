/** Dried like this, will it keep on the shelf? Invented: jars of figs, with and without a meter, and one of venison. */
import { keeps } from 'stillroom';
import { fruitWaterActivity } from 'stillroom/water-activity';

const jars = [
  { food: 'figs', moisture: '16 %' },
  { food: 'figs', moisture: '16 %', meter: 0.55 },
  { food: 'figs', moisture: '26 %' },
  { food: 'venison', moisture: '16 %' },
];

for (const { food, moisture, meter } of jars) {
  console.log(`Dried ${food} at ${moisture} moisture${meter === undefined ? '' : `; a meter reads ${meter}`}`);
  const estimate = fruitWaterActivity({ food, moisture });
  if (!estimate.known) {
    console.log(`  No answer: ${estimate.reason.text}`);
    for (const { text } of estimate.instead) console.log(`  - ${text}`);
    continue;
  }

  const { low, likely, high } = estimate.waterActivityRange;
  if (meter === undefined) {
    console.log(
      `  Water activity, worked out: ${likely.toFixed(2)}, between ${low.toFixed(2)} and ${high.toFixed(2)}.`,
    );
  }
  const answer = keeps({ waterActivity: meter ?? estimate.waterActivityRange });
  console.log(`  At room temperature: ${answer.verdict}.`);
  console.log(`  ${answer.advice}`);
}
