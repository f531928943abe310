/** A small ext4 disk in a file, whose power can be cut: what was not flushed is gone when it comes back. Needs root. */

import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Ext4Disk {
  /** Where it is mounted. */
  readonly folder: string;
  /** From now on nothing more reaches the disk, not even the journal. */
  cutPower(): void;
  /** Unmounts what is left and mounts it again, as after a restart: the journal is replayed. */
  powerUp(): void;
  remove(): void;
}

/** EXT4_IOC_SHUTDOWN is _IOR('X', 125, __u32); flag 2 goes down without flushing the log (linux/fs/ext4/ext4.h). */
const shutdown = `open(my $f, '<', $ARGV[0]) or die "open: $!"; my $flag = pack('L', 2); ioctl($f, 0x8004587d, $flag) or die "ioctl: $!";`;

/** Why it cannot be had on this machine, or nothing. */
export function whyNoDisk(): string | undefined {
  if (process.platform !== 'linux') return 'only Linux has ext4';
  if (process.getuid?.() !== 0) return 'mounting a disk needs root';
  for (const [program, asked] of [
    ['mkfs.ext4', '-V'],
    ['perl', '-v'],
    ['mount', '--version'],
  ] as const)
    if (spawnSync(program, [asked]).error) return `there is no ${program} here`;
  return undefined;
}

export function createDisk(): Ext4Disk {
  const base = mkdtempSync(join(tmpdir(), 'standbook-disk-'));
  const image = join(base, 'disk.img');
  const folder = join(base, 'mounted');
  mkdirSync(folder);
  run('truncate', '-s', '512M', image);
  run('mkfs.ext4', '-q', '-F', image);
  const mount = () => run('mount', '-o', 'loop', image, folder);
  // Something may hold it for a moment after its browser has died.
  const unmount = () => {
    for (let tries = 0; tries < 50; tries += 1) {
      if (spawnSync('umount', [folder]).status === 0) return;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
    }
    throw new Error(`${folder} cannot be unmounted`);
  };
  const handle = join(folder, 'power');
  mount();
  writeFileSync(handle, '');
  return {
    folder,
    cutPower: () => run('perl', '-e', shutdown, handle),
    powerUp() {
      unmount();
      mount();
      writeFileSync(handle, '');
    },
    remove() {
      unmount();
      rmSync(base, { recursive: true, force: true });
    },
  };
}

function run(program: string, ...asked: readonly string[]): void {
  const { status, stderr, error } = spawnSync(program, asked, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${program}: ${error?.message ?? stderr}`);
}
