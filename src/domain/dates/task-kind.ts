export const TASK_KINDS = [
  'battery',
  'backflow',
  'start-up',
  'winterizing',
  'inspection',
  'warranty-inspection',
  'warranty-end',
  'audit',
  'establishment-end',
  'removal',
  'maintenance'
] as const
export type TaskKind = (typeof TASK_KINDS)[number]

const BY_WORDS: readonly (readonly [RegExp, TaskKind])[] = [
  [/\bwarranty\b.*\binspect/iu, 'warranty-inspection'],
  [/\bstart[- ]?up\b/iu, 'start-up'],
  [/\bwinteri[sz]/iu, 'winterizing'],
  [/\baudit/iu, 'audit'],
  [/\bestablishment\b/iu, 'establishment-end'],
  [/\bremov(?:e|al|ing)\b.*\b(?:system|line|irrigation|temporary)\b|\btemporary\b.*\bremov/iu, 'removal'],
  [/\binspect/iu, 'inspection']
]

/** Which list a task belongs to, by its own words: "monthly inspection" is an inspection. "maintenance" where none of them is said. */
export function taskKind(words: string): TaskKind {
  return BY_WORDS.find(([form]) => form.test(words))?.[1] ?? 'maintenance'
}
