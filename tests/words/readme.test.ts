/** What the README promises about files and commands is what the code does. */

import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { securityHeaders } from '../../scripts/security-headers.mjs';
import { type DeliveryColumn, deliveryColumns } from '../../src/exchange/delivery-columns';

const readme = readFileSync('README.md', 'utf8');
const developers = readFileSync('DEVELOPERS.md', 'utf8');
const manifest: {
  scripts: Record<string, string>;
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
} = JSON.parse(readFileSync('package.json', 'utf8'));

const rows = readme
  .split('\n')
  .filter((line) => line.startsWith('| `'))
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );

const textOf: Readonly<Record<DeliveryColumn['reads'], string>> = {
  text: 'text',
  number: 'a number',
  date: 'a date, 2026-11-28',
  choice: '',
  choices: '; several with `;` between',
  'yes-no': '',
};

describe('the table of the delivery list', () => {
  test('has every column once, in the order of the code', () => {
    expect(rows.map(([name]) => name)).toEqual(deliveryColumns.map(({ name }) => `\`${name}\``));
  });

  test.each(deliveryColumns)('says of $name what it takes and means', (column) => {
    const { name, required, reads, allowed = [], means } = column;
    const choices = allowed.map((choice) => `\`${choice}\``).join(', ');
    const taken = reads === 'number' && choices !== '' ? choices : `${choices}${textOf[reads]}`;
    const [, isRequired, takes, meaning] =
      rows.find(([cell]) => cell === `\`${name}\``) ?? expect.fail(`${name} is not in the README`);
    expect({ isRequired, takes, meaning }).toEqual({
      isRequired: required ? 'yes' : '',
      takes: taken,
      meaning: means,
    });
  });
});

test.each(Object.entries(securityHeaders))(
  'the README advises %s as the server sends it',
  (name, value) => {
    expect(readme).toContain(`${name}: ${value}`);
  },
);

test('every picture of the README is there', () => {
  const pictures = [...readme.matchAll(/!\[[^\]]*\]\(([^)]+)\)/g)].map(([, path = '']) => path);
  expect(pictures.length).toBeGreaterThan(3);
  expect(pictures.filter((path) => !existsSync(path))).toEqual([]);
});

test('every command in the two documents exists', () => {
  const named = [...`${readme}${developers}`.matchAll(/npm (?:run )?([a-z]+)/g)].map(
    ([, name = '']) => name,
  );
  expect(named.length).toBeGreaterThan(8);
  expect(named.filter((name) => manifest.scripts[name] === undefined)).toEqual([]);
});

test('every dependency has its reason', () => {
  const packages = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies });
  expect(
    packages.filter((name) => !new RegExp(`^\\| \`${name}\` +\\|`, 'm').test(developers)),
  ).toEqual([]);
});
