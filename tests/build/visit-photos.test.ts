import { cpSync, existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { beforeAll, describe, expect, it } from 'vitest'
import { assessFleet } from '../../src/build/assess.ts'
import { buildFleet } from '../../src/build/pipeline.ts'
import { LONGEST_PX } from '../../src/build/picture.ts'
import { prepareVisit } from '../../src/build/record-visit.ts'
import { takeVisitPhotos } from '../../src/build/visit-photos.ts'
import { writeSiteFiles } from '../../src/build/write-site-file.ts'
import { date } from '../../src/units/date.ts'
import { filesIn, temporaryFolder } from './temporary-folder.ts'

const ON = date('2026-05-04')
const temporary = temporaryFolder()
const SITE = 'kestrel-cross'

/** As a phone writes it: on its side, far too large, with its place. */
const fromPhone = async (red: number): Promise<Uint8Array> =>
  sharp({ create: { width: LONGEST_PX * 2, height: LONGEST_PX, channels: 3, background: { r: red, g: 20, b: 20 } } })
    .jpeg()
    .withExif({
      IFD0: { Make: 'Sample Camera', Orientation: '6' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '37/1 48/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '122/1 24/1 0/1' }
    })
    .withMetadata({ orientation: 6 })
    .toBuffer()

let phone: Uint8Array
let other: Uint8Array
beforeAll(async () => {
  phone = await fromPhone(200)
  other = await fromPhone(90)
})

/** A fleet of one site, and pictures beside it. */
function begin() {
  const sites = temporary.path('sites')
  for (const name of ['_shared', SITE]) cpSync(join('sites', name), join(sites, name), { recursive: true })
  mkdirSync(temporary.path('phone'))
  const put = (name: string, bytes: Uint8Array | string): string => {
    writeFileSync(temporary.path('phone', name), bytes)
    return temporary.path('phone', name)
  }
  const assess = () => {
    const assessment = assessFleet(sites, ON)
    const [site] = assessment.sites
    if (!site) throw new Error('no site')
    return { assessment, site }
  }
  return { sites, put, assess, sources: assess().site.sources }
}

const slip = (photos: string): string => `---\non: 2026-05-04\nreason: route\nfound: [drip torn]\n${photos}---\n`

describe('a photograph of a visit', () => {
  it('is made ready for a copy: upright, sized, without its place, under a plain name', async () => {
    const { put, sources } = begin()
    const [photo] = await takeVisitPhotos([`${put('IMG 0042 (Zoë).JPEG', phone)}=torn diaphragm`], sources)
    expect(photo).toMatchObject({ file: 'img-0042-zoe.jpg', caption: 'torn diaphragm', was: 'IMG 0042 (Zoë).JPEG' })
    expect(photo?.copy?.path).toBe(`${sources.folder}/photos/img-0042-zoe.jpg`)
    const { width, height, exif, orientation } = await sharp(photo?.copy?.content).metadata()
    expect([width, height, exif, orientation]).toEqual([LONGEST_PX / 2, LONGEST_PX, undefined, undefined])
  })

  it('that is there already is named and not copied, by its name or its path', async () => {
    const { sites, sources } = begin()
    const path = join(sites, SITE, 'photos/vb1-open.jpg')
    for (const given of ['vb1-open.jpg', path])
      expect(await takeVisitPhotos([given], sources)).toEqual([{ file: 'vb1-open.jpg', was: 'vb1-open.jpg' }])
  })

  it('never takes the place of another of that name', async () => {
    const { put, sources } = begin()
    const clash = put('vb1-open.jpg', phone)
    mkdirSync(temporary.path('phone', 'b'))
    const again = put('b/vb1-open.jpg', other)
    const names = (await takeVisitPhotos([clash, again], sources)).map(one => one.file)
    expect(names).toEqual(['vb1-open-2.jpg', 'vb1-open-3.jpg'])
  })

  it('is refused where there is no such file, and where it is no picture, whatever it is called', async () => {
    const { put, sources } = begin()
    await expect(takeVisitPhotos(['nowhere.jpg'], sources)).rejects.toThrow('There is no picture nowhere.jpg')
    await expect(takeVisitPhotos(['../site.md'], sources)).rejects.toThrow('There is no picture')
    await expect(takeVisitPhotos([put('words.jpg', 'no picture')], sources)).rejects.toThrow('is not a picture')
    await expect(takeVisitPhotos([put('cut.jpg', phone.slice(0, 900))], sources)).rejects.toThrow('cannot be read')
  })

  it('may have an equals sign in its name', async () => {
    const { put, sources } = begin()
    const [photo] = await takeVisitPhotos([put('a=b.jpg', phone)], sources)
    expect([photo?.file, photo?.caption]).toEqual(['a-b.jpg', undefined])
  })
})

describe('a visit with photographs', () => {
  it('goes into binder and office page, stripped, and nothing of it into public; then it is told of where it is gone', async () => {
    const { sites, put, assess } = begin()
    const { assessment, site } = assess()
    const photos = await takeVisitPhotos(
      [`${put('IMG_0042.jpg', phone)}=torn diaphragm`, put('b.jpg', other)],
      site.sources
    )
    const prepared = prepareVisit({
      assessment,
      site,
      source: { file: 'slip', text: slip('photos: [img_0042.jpg]\n') },
      photos
    })
    if (!prepared.ok) throw new Error(prepared.findings.map(one => one.message).join())
    const { file, text, photos: copies, changes } = prepared.visit
    expect(text).toContain('photos:\n  - { file: img-0042.jpg, caption: torn diaphragm }\n  - b.jpg\n')
    expect(changes.come.filter(one => one.code.startsWith('box/photo'))).toEqual([])
    writeSiteFiles([
      ...copies.map(one => ({ file: one.path, text: one.content, isNew: true })),
      { file, text, isNew: true }
    ])

    const out = temporary.path('dist')
    await buildFleet({ sites, out, on: ON, mark: 'one' })
    const built = filesIn(out)
    expect(readFileSync(join(out, `office/${SITE}/photos/img-0042.jpg`), 'latin1')).not.toMatch(/Exif|Sample Camera/u)
    for (const page of ['binder.html', 'index.html']) {
      expect(built[`office/${SITE}/${page}`]).toMatch(/<img src="photos\/img-0042\.jpg" alt="torn diaphragm">/u)
      expect(built[`office/${SITE}/${page}`]).toContain('photos/b.jpg')
    }
    const open = Object.keys(built).filter(path => path.startsWith('public/'))
    expect(open.length).toBeGreaterThan(3)
    expect(open.filter(path => /img-0042|\/b\.jpg/u.test(path + (built[path] ?? '')))).toEqual([])

    writeFileSync(join(sites, SITE, 'photos/b.jpg'), 'no picture any more')
    const told = assess().site.findings.filter(one => one.code.startsWith('box/photo'))
    expect(told.map(one => [one.code, one.subject])).toEqual([['box/photo-not-a-picture', 'visit 2026-05-04']])
    await buildFleet({ sites, out, on: ON, mark: 'one' })
    expect(existsSync(join(out, `office/${SITE}/photos/b.jpg`))).toBe(false)
    expect(filesIn(out)[`office/${SITE}/binder.html`]).not.toContain('photos/b.jpg')
  })

  it('from a slip that names a picture nobody gave is recorded, and what is missing is told of', () => {
    const { assess } = begin()
    const { assessment, site } = assess()
    const prepared = prepareVisit({
      assessment,
      site,
      source: { file: 'slip', text: slip('photos: [IMG_0042.jpg]\n') }
    })
    if (!prepared.ok) throw new Error('not taken')
    expect(prepared.visit.changes.come.map(one => one.code)).toContain('box/photo-not-there')
    expect(prepared.visit.changes.gone.map(one => one.code)).not.toContain('box/photo-not-there')
  })

  it('leaves no picture where the visit cannot be written', async () => {
    const { sites, put, assess } = begin()
    const { site } = assess()
    const [photo] = await takeVisitPhotos([put('b.jpg', other)], site.sources)
    if (!photo?.copy) throw new Error('no copy')
    const before = readdirSync(join(sites, SITE, 'photos'))
    const visit = { file: join(sites, SITE, 'site.md'), text: 'x', isNew: true }
    expect(() =>
      writeSiteFiles([{ file: photo.copy?.path ?? '', text: photo.copy?.content ?? '', isNew: true }, visit])
    ).toThrow('is there already')
    expect(readdirSync(join(sites, SITE, 'photos'))).toEqual(before)
  })
})
