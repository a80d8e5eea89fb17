/** What went wrong with this batch? Invented: carrots under pressure at 4,300 ft, and the next morning's look at the jars. */
import { formatQuantity, reviewBatch } from 'stillroom';

const record = {
  date: '2026-09-12',
  name: 'Carrots in pints',
  lots: [{ food: 'carrots', form: 'sliced', raw: '14 lb', ready: '11 lb' }],
  process: {
    food: 'carrots',
    form: 'sliced',
    pack: 'hot',
    jar: 'pint',
    method: 'dial-gauge',
    elevation: '4,300 ft',
    minutes: 25,
    pressure: '13 psi',
    lowestPressure: '10 psi',
    vented: '10 min',
  },
  jarsFilled: 9,
  jarsSealed: 8,
};

for (const sinceProcessing of ['16 h', '3 days']) {
  const { verdict, findings } = reviewBatch({ record, sinceProcessing });
  console.log(`${record.name}, ${sinceProcessing} after the canner: ${verdict}`);
  for (const { found, wanted, remedies, next, timeLeft } of findings) {
    console.log(`  Found: ${found}. It should be ${wanted}.`);
    console.log(`    ${remedies.join(' or ')}${timeLeft === undefined ? '' : `, within ${formatQuantity(timeLeft)}`}`);
    for (const text of next) console.log(`    ${text}`);
  }
}
