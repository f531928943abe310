/** What a record file says to somebody who opens it without the app. */

export const recordFileReadme = `WHAT THIS IS

Records of bikes that were assembled and handed over by a workshop: who did what, when, with which
tool and to which value. They were written by Standbook, and can be read and verified without it.

WHAT IS INSIDE

  index.csv        one line for each record: frame number, make, model, and the name of its log
  logs/            one file for each record; one entry on each line (JSON), in order
  plans/           the plan that was frozen when the job began: its steps, joints, points and figures
  pictures/        photos and drawn signatures
  people.json      names and public keys of those who worked and signed; no private keys, no PINs
  customers.json   only where it was asked for: names and contacts. Keep the file accordingly
  shop.json        only in a backup: wrenches, adapters and figures
  manifest.json    what belongs to which record, and one digest over all of them

HOW TO READ A RECORD

Find the frame number in index.csv and open the log named at the end of its line with any text editor.
"event" says what happened, "by" who did it (people.json has the name), "at" what the tablet's clock
claimed at that moment.

HOW TO VERIFY IT WITHOUT THE APP

  1. Files in logs/, plans/ and pictures/ are named after the SHA-256 (FIPS 180-4) of their bytes.
  2. The "id" of each entry is the SHA-256 of all its other members, written as canonical JSON (RFC 8785).
     "parents" are the ids of what came before, so a changed, missing or moved entry shows.
  3. "jws" in an entry of the kind "signed" is a signature (JWS, RFC 7515, ES256) by the key of that
     person in people.json, over the ids in "heads".
  4. "digest" in manifest.json is a Merkle root (RFC 9162, SHA-256) over the canonical JSON
     {"heads":[...],"job":"..."} of every record of the shop, in order of their job ids. "proof" leads from
     one record to it. The same root stands on the page that the shop printed on that day.

A seal shows that nothing was changed since it was written. It does not show that what people wrote was
true, nor that a clock was right. Keys that came with a file show that one hand signed, not whose it was.
`;
