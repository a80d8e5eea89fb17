/** An invented harvest in an invented kitchen. The beans are there to show a refusal: no canner here is safe for them. */
export const inventedDay = {
  lots: [
    { food: 'apricot', raw: '40 lb', name: 'marked-down apricots' },
    { food: 'green bean', raw: '1/2 bushel', name: 'beans from the garden' },
  ],
  kitchen: {
    elevation: '2,600 ft',
    hours: '7 h',
    hands: 2,
    burners: 4,
    pots: [{ volume: '12 quarts' }, { volume: '6 quarts' }],
    canners: [{ method: 'boiling-water', holds: { quart: 7, pint: 9, 'half-pint': 12 } }],
    jars: [
      { jar: 'quart', count: 12 },
      { jar: 'pint', count: 30 },
    ],
    dryer: { trays: 8, trayArea: '1 ft2' },
    freezer: { room: '1 ft3' },
  },
};
