/** A printed sheet read back from its PDF: its text, its pages, and what its code says. */

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import readCode from 'jsqr';

export type Paper = 'A4' | 'Letter';

export interface PrintedSheet {
  readonly pages: number;
  /** Millimetres, as the PDF says. */
  readonly size: readonly [number, number];
  /** Text in reading order, with every run of white space as one blank. */
  readonly text: string;
  /** What the QR code carries: on the last page that has one. */
  readonly code: string | undefined;
}

export async function print(page: Page, paper: Paper): Promise<PrintedSheet> {
  const folder = mkdtempSync(join(tmpdir(), 'standbook-print-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, await page.pdf({ format: paper }));
    const facts = ran('pdfinfo', [file]);
    const pages = Number(/^Pages:\s+(\d+)$/m.exec(facts)?.[1]);
    const points = /^Page size:\s+([\d.]+) x ([\d.]+) pts/m.exec(facts)?.slice(1).map(Number) ?? [];
    const [width = 0, height = 0] = points.map((point) => (point * 25.4) / 72);
    return {
      pages,
      size: [width, height],
      text: ran('pdftotext', ['-raw', file, '-']).replaceAll(/\s+/g, ' '),
      code: codeIn(file, pages, folder),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function codeIn(file: string, pages: number, folder: string): string | undefined {
  for (let page = pages; page > 0; page -= 1) {
    const code = codeOn(file, page, folder);
    if (code !== undefined) return code;
  }
  return undefined;
}

/** Rendered as a printer of 300 dots an inch would, so that the code is read as a telephone reads it. */
function codeOn(file: string, page: number, folder: string): string | undefined {
  const picture = join(folder, 'page');
  const only = ['-f', String(page), '-l', String(page), '-singlefile'];
  ran('pdftoppm', ['-r', '300', ...only, file, picture]);
  const { data, width, height } = readPixmap(readFileSync(`${picture}.ppm`));
  return readCode(data, width, height, { inversionAttempts: 'dontInvert' })?.data;
}

/** Binary portable pixmap (P6, as netpbm describes it): three header numbers, then RGB bytes. */
function readPixmap(bytes: Buffer) {
  const header = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.toString('latin1', 0, 64));
  if (header === null) throw new Error('the picture is no pixmap');
  const [width, height] = [Number(header[1]), Number(header[2])];
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let pixel = 0, from = header[0].length; pixel < width * height; pixel += 1, from += 3) {
    data.set(bytes.subarray(from, from + 3), pixel * 4);
  }
  return { data, width, height };
}

function ran(program: string, args: readonly string[]): string {
  const { status, stdout, stderr } = spawnSync(program, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${program} failed: ${stderr}`);
  return stdout;
}

/** A compact JWS (RFC 7515, section 7.1): three base64url parts; the middle one is what was said. */
export function saidIn(jws: string): Readonly<Record<string, unknown>> {
  const parts = jws.split('.');
  if (parts.length !== 3) throw new Error('a compact JWS has three parts');
  return JSON.parse(Buffer.from(parts[1] ?? '', 'base64url').toString('utf8'));
}
