import type { z } from 'zod'
import type { At } from '../../diagnostics/finding.ts'
import type { SiteKey } from '../../model/site.ts'
import { optional } from './field.ts'
import { given, made } from './made.ts'
import { count } from './numbers.ts'
import { list, record } from './record.ts'
import { id, text } from './texts.ts'

/** A line of the key register. Its place and its code belong under `private:`, which reaches the restricted sheet alone. */
export const key = record(
  'a key',
  {
    does: 'A key: what it opens and who holds one.',
    example: '{ id: C7, opens: [K1, VB1], count: 3, held-by: [owner, maintainer], private: { C7: hook 4 } }'
  },
  {
    id: id('Its mark, as stamped on it.', 'C7'),
    kind: optional(text('Kind of key or tool.', 'cam lock key')),
    opens: optional(
      list(text('A box, a controller, or words.', 'K1'), { does: 'What it opens.', example: '[K1, VB1]' })
    ),
    count: optional(count('How many there are.', '3')),
    'held-by': optional(
      list(text('One holder, by role.', 'maintainer'), { does: 'Who holds them.', example: '[owner, maintainer]' })
    )
  }
)

export function makeKey(raw: z.output<typeof key>, at: At): SiteKey {
  return made<SiteKey>({
    at,
    id: raw.id,
    kind: given(raw.kind),
    opens: raw.opens ?? [],
    count: given(raw.count),
    heldBy: raw['held-by'] ?? []
  })
}
