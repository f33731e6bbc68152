import type { Binder } from '../binder/blocks.ts'

/** How large the name of the site and its tags are set, so that a cover stays one page: classes of paper.css. */
export interface CoverLook {
  readonly title: 'title-large' | 'title-long' | 'title-longest'
  readonly tags: 'tags-two' | 'tags-three' | 'tags-four' | 'tags-nine' | 'tags-many' | 'tags-crowd'
}

const TITLES = [
  { most: 28, title: 'title-large' },
  { most: 44, title: 'title-long' }
] as const

const TAGS = [
  { most: 2, tags: 'tags-two' },
  { most: 3, tags: 'tags-three' },
  { most: 4, tags: 'tags-four' },
  { most: 9, tags: 'tags-nine' },
  { most: 24, tags: 'tags-many' }
] as const

export function coverLook({ title, cover }: Binder): CoverLook {
  return {
    title: TITLES.find(({ most }) => title.length <= most)?.title ?? 'title-longest',
    tags: TAGS.find(({ most }) => cover.tags.length <= most)?.tags ?? 'tags-crowd'
  }
}
