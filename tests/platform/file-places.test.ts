/** Where files go: whole or not at all, into the downloads or into a folder. */

import { describe, expect, test } from 'vitest';
import { downloadSink, folderChooser, sinkInFolder } from '../../src/platform/file-places';

const bytes = (...values: number[]) => Uint8Array.from(values);

describe('a download', () => {
  test('is saved once, whole, when it is closed', async () => {
    const saved: { name: string; type: string; content: Blob }[] = [];
    const sink = downloadSink('a.zip', 'application/zip', (file) => saved.push(file));
    await sink.write(bytes(1, 2));
    await sink.write(new Uint8Array(9 * 2 ** 20));
    await sink.write(bytes(3));
    expect(saved).toEqual([]);
    await sink.close();
    expect(saved).toMatchObject([{ name: 'a.zip', type: 'application/zip' }]);
    const content = new Uint8Array((await saved[0]?.content.arrayBuffer()) ?? new ArrayBuffer());
    expect(content.length).toBe(9 * 2 ** 20 + 3);
    expect([content[0], content[1], content.at(-1)]).toEqual([1, 2, 3]);
  });

  test('that is given up is not saved', async () => {
    const saved: unknown[] = [];
    const sink = downloadSink('a.zip', 'application/zip', (file) => saved.push(file));
    await sink.write(bytes(1));
    await sink.abandon();
    expect(saved).toEqual([]);
  });
});

/** As much of a chosen folder as is used of it. */
function folderThat(answers: PermissionState) {
  const files = new Map<string, number[]>();
  const log: string[] = [];
  return {
    files,
    log,
    handle: {
      name: 'Papers',
      requestPermission: async () => answers,
      getFileHandle: async (name: string) => ({
        createWritable: async () => {
          const pieces: number[] = [];
          return {
            write: async (piece: Uint8Array) => void pieces.push(...piece),
            close: async () => void files.set(name, pieces),
            abort: async () => void log.push(`gave up ${name}`),
          };
        },
      }),
    },
  };
}

describe('a folder', () => {
  test('cannot be chosen where the browser has no picker', () => {
    expect(folderChooser({})).toBeUndefined();
  });

  test('is chosen by a person, who may also change their mind', async () => {
    const { handle } = folderThat('granted');
    const choose = folderChooser({ showDirectoryPicker: async () => handle as never }); // as much as is used of it
    expect(await choose?.()).toEqual({ ok: true, value: { name: 'Papers', handle } });
    const refuse = folderChooser({
      showDirectoryPicker: async () => {
        throw new DOMException('closed', 'AbortError');
      },
    });
    expect(await refuse?.()).toEqual({ ok: false, refusal: { code: 'folder-unavailable' } });
  });

  test('gets the file when it is closed', async () => {
    const { handle, files, log } = folderThat('granted');
    const sink = await sinkInFolder({ name: 'Papers', handle }, 'a.zip');
    if (!sink.ok) throw new Error(sink.refusal.code);
    await sink.value.write(bytes(1, 2));
    await sink.value.write(bytes(3));
    expect(files.size).toBe(0);
    await sink.value.close();
    expect(files.get('a.zip')).toEqual([1, 2, 3]);
    const second = await sinkInFolder({ name: 'Papers', handle }, 'b.zip');
    if (second.ok) await second.value.abandon();
    expect(log).toEqual(['gave up b.zip']);
  });

  test.each(['denied', 'prompt'] as const)(
    'that is %s is said to be unavailable',
    async (answer) => {
      const { handle } = folderThat(answer);
      expect(await sinkInFolder({ name: 'Papers', handle }, 'a.zip')).toMatchObject({
        refusal: { code: 'folder-unavailable' },
      });
    },
  );

  test('that is gone is said to be unavailable', async () => {
    expect(await sinkInFolder({ name: 'Papers', handle: undefined }, 'a.zip')).toMatchObject({
      refusal: { code: 'folder-unavailable' },
    });
  });
});
