/**
 * In the page: fills the app's open store without any code of the app. Toys are named "Toy 0", "Toy 1" …, the last the
 * latest, each with so many readings of as many measures.
 */
export function fillRaw({ toys, readings }: { toys: number; readings: number }): Promise<void> {
  const measures = ['head-girth', 'neck-girth', 'chest-girth', 'waist-girth', 'hip-girth', 'upper-arm-girth'];
  const traits = {
    shoulders: 'sloped',
    neck: 'clear',
    arms: 'down',
    posture: 'sits',
    legs: 'apart',
    ears: 'top',
    tail: false,
    stuffing: 'soft',
  };
  return new Promise((done, failed) => {
    const opening = indexedDB.open('hemling');
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const writing = opening.result.transaction(['toys', 'readings'], 'readwrite');
      for (let toy = 0; toy < toys; toy++) {
        const at = 1.7e12 + toy;
        const id = `toy${toy}`;
        writing.objectStore('toys').put({
          ...{ id, name: `Toy ${toy}`, kind: 'upright', traits, note: '', corrections: {}, kept: {} },
          ...{ createdAt: at, changedAt: at },
        });
        for (let each = 0; each < readings; each++)
          writing.objectStore('readings').put({
            ...{ id: `${id}r${each}`, toyId: id, measureId: measures[each % measures.length], mm: 300 + each },
            ...{ from: 'tape', set: at, turn: at + each, takenAt: at, changedAt: at + each },
          });
      }
      writing.onerror = () => failed(writing.error);
      writing.oncomplete = () => {
        opening.result.close();
        done();
      };
    };
  });
}
