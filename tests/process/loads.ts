/** A load of beans in a pressure canner, as `loadTimeline` takes it. */
export const BEANS = {
  food: 'green beans',
  pack: 'hot',
  jar: 'quart',
  method: 'weighted-gauge',
  elevation: '800 ft',
  jars: 7,
  waterVolume: '3 quarts',
  burnerPower: '2400 W',
} as const;
