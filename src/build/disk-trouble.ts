import { Refusal } from '../base/refusal.ts'

const TROUBLES: Readonly<Record<string, string>> = {
  ENOSPC: 'The disk is full',
  EDQUOT: 'The disk quota is used up',
  EROFS: 'The disk takes no writing',
  EACCES: 'Reading or writing is not allowed',
  EPERM: 'Reading or writing is not allowed',
  EFBIG: 'A file grew past the limit set here',
  EMFILE: 'Too many files are open',
  EIO: 'The disk reports a fault',
  EBUSY: 'Something else holds on to it',
  EEXIST: 'A file stands where a folder is needed',
  ENOTDIR: 'A file stands where a folder is needed',
  EISDIR: 'A folder stands where a file is needed'
}

/**
 * A failed write in words for the reader, where the machine is the reason; otherwise the error as it was, which is then a fault of ours.
 * `consolation` says what was spared.
 */
export function diskTrouble(error: unknown, consolation: string): unknown {
  const { code, path } = error as NodeJS.ErrnoException
  const words = code === undefined ? undefined : TROUBLES[code]
  if (!words) return error
  return new Refusal(`${words}${path ? `: ${path}` : ''}.`, consolation)
}
