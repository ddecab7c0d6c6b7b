"""Copies of a store that are checked as they are made and as they are read: one file with every entry and
every original file.

A backup is a zip archive: ``entries.jsonl`` (one entry a line, in order), for each further kitchen of the
store ``at/<key>.jsonl``, ``people.jsonl`` (names that entries refer to), ``files/<hash>`` (originals) and
``manifest.json``. It is read back entry by entry against the hash chain, so that a damaged or forged one is
refused at its place; nothing in it decides where a file is written.
"""

from __future__ import annotations

import hashlib
import json
import os
import zipfile
import zlib
from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import contextmanager, suppress
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any, BinaryIO

from frywright.ledger.attachments import Attachments, sync_folder
from frywright.ledger.checking import copies, lost_originals, originals
from frywright.ledger.dropped import Walk
from frywright.ledger.export import json_lines
from frywright.ledger.names import Person, keep_people, people_kept, read_person
from frywright.ledger.store import Point, Store
from frywright.ledger.writer import HOME
from frywright.model.entry import DROPPED, GENESIS, Entry, Recorded, canonical, chain_hash, unstamp
from frywright.model.errors import RecordError

FORMAT, FORMAT_OF_SEVERAL = "frywright-backup-1", "frywright-backup-2"
FORMAT_WITH_PEOPLE, PEOPLE = "frywright-backup-3", "people.jsonl"
"""A backup of one kitchen, one of several, and one with names that entries refer to: a program that knows
only the one before would lose the rest.
"""
LARGEST_MANIFEST_BYTES = 1_000_000
"""Some six thousand kitchens."""
LONGEST_LINE_BYTES = 8_000_000
LARGEST_FILE_BYTES = 200_000_000
BLOCK = 2000


@dataclass(frozen=True, slots=True, kw_only=True)
class Manifest:
    """What a backup holds: for each kitchen where its chain ends, and how many original files."""

    ends: Mapping[str, Point]
    files_count: int
    people_count: int = 0

    @property
    def entries_count(self) -> int:
        """Entries of all kitchens."""
        return sum(end.number for end in self.ends.values())

    @property
    def last_hash(self) -> str:
        """Head of the first kitchen's chain."""
        return self.ends[HOME].hash


class _Text:
    """A text stream over a binary one, for the exporters."""

    def __init__(self, raw: Any) -> None:
        self._raw = raw

    def write(self, text: str) -> int:
        return int(self._raw.write(text.encode()))


def backup(store: Store, out: Path, progress: Callable[[int], None] = lambda n: None) -> Manifest:
    """Write a backup while the store is in use: everything up to the newest entry at the start; checked
    before it takes its name. Raises RecordError: the chain of the store is broken, a kept file was changed or
    lost, or the place cannot be written; nothing takes the name.
    """
    files = Attachments(store.files)
    ends = {site: store.at(site).last() for site in store.sites()}
    part = out.with_name(out.name + ".part")
    try:
        out.parent.mkdir(parents=True, exist_ok=True)
        with zipfile.ZipFile(part, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
            for site, end in ends.items():
                with archive.open(_lines_of(site), "w", force_zip64=True) as stream:
                    items = _until(store.at(site).entries(), end.number, progress)
                    json_lines(items, _Text(stream))  # type: ignore[arg-type]
            own = {site: end for site, end in ends.items() if site not in copies(store)}
            named = {name for site, end in own.items() for name in originals(store.at(site), end.number)}
            there = files.folder.iterdir() if files.folder.exists() else ()
            names = sorted({*named, *(p.name for p in there if len(p.name) == 64)})
            for name in names:
                with (
                    files.open(name) as source,
                    archive.open(f"files/{name}", "w", force_zip64=True) as target,
                ):
                    while piece := source.read(1 << 20):
                        target.write(piece)
            with store.looking() as connection:
                people = people_kept(connection)
            if people:
                lines = (canonical(asdict(one)) for one in people)
                archive.writestr(PEOPLE, "".join(f"{line}\n" for line in lines))
            manifest = Manifest(ends=ends, files_count=len(names), people_count=len(people))
            archive.writestr("manifest.json", canonical(_told(manifest)))
        if check(part) != manifest:
            raise RecordError("The backup does not read back as it was written; it was thrown away.")
        with part.open("rb+") as handle:
            os.fsync(handle.fileno())
        os.replace(part, out)
        sync_folder(out.parent)
    except OSError as error:
        raise RecordError(
            "{out} cannot be written: {cause}. No backup was made.", out=str(out), cause=error.strerror
        ) from error
    finally:
        with suppress(OSError):
            part.unlink(missing_ok=True)
    return manifest


def _until(entries: Iterable[Recorded], end: int, progress: Callable[[int], None]) -> Iterator[Recorded]:
    for item in entries:
        if item.number > end:
            return
        if item.number % BLOCK == 0:
            progress(item.number)
        yield item


def _lines_of(site: str) -> str:
    """Where a backup holds a kitchen's entries."""
    return f"at/{site}.jsonl" if site else "entries.jsonl"


def _told(manifest: Manifest) -> dict[str, Any]:
    """A manifest as it is written."""
    home, others = manifest.ends[HOME], {site: end for site, end in manifest.ends.items() if site}
    told: dict[str, Any] = {
        "format": FORMAT_WITH_PEOPLE if manifest.people_count else FORMAT_OF_SEVERAL if others else FORMAT,
        "entries_count": home.number,
        "last_hash": home.hash,
        "files_count": manifest.files_count,
    }
    if manifest.people_count:
        told["people_count"] = manifest.people_count
    if others:
        told["at"] = {site: {"entries_count": e.number, "last_hash": e.hash} for site, e in others.items()}
    return told


def check(path: Path) -> Manifest:
    """Read a whole backup and follow its chain, writing nothing. Raises RecordError: what does not fit, and
    where.
    """
    with _read(path), _opened(path) as archive:
        told = _manifest(archive)
        _check_files(archive, told)
        _people(archive, told)
        for site, end in told.ends.items():
            found = _followed(archive, site)
            if found != end:
                raise _other_end(found.number, end.number)
        return told


def _followed(archive: zipfile.ZipFile, site: str) -> Point:
    """Where the chain of a kitchen ends in a backup."""
    count, previous = 0, GENESIS
    with archive.open(_lines_of(site)) as stream:
        for item in Walk().passed(read_lines(stream)):
            empty = item.entry.kind == DROPPED
            if (
                item.number != count + 1
                or item.previous_hash != previous
                or (not empty and chain_hash(previous, count + 1, item.entry, item.recorded_at) != item.hash)
            ):
                raise RecordError("The backup's chain breaks at entry {number}.", number=item.number)
            count, previous = item.number, item.hash
    return Point(number=count, hash=previous)


def _people(archive: zipfile.ZipFile, told: Manifest) -> list[Person]:
    """Names of a backup, each the one that its reference was made of."""
    found = []
    if told.people_count:
        with archive.open(PEOPLE) as stream:
            while line := stream.readline(LONGEST_LINE_BYTES):
                found.append(read_person(line))
    if len(found) != told.people_count:
        raise RecordError("The backup holds other names than its manifest says.")
    return found


def _other_end(count: int, told: int) -> RecordError:
    return RecordError("The backup ends at entry {count}, its manifest says {told}.", count=count, told=told)


def restore(path: Path, store: Store) -> Manifest:
    """Put a backup into an empty store, entry by entry against the chain, and its original files by their
    content. Raises RecordError: the store is not empty, or something does not fit; what was written up to
    there is whole and verifies.
    """
    _empty(store)
    with _read(path), _opened(path) as archive:
        told, files = _manifest(archive), Attachments(store.files)
        _check_files(archive, told)
        for info in archive.infolist():
            if info.filename.startswith("files/"):
                _restore_file(archive, info, files)
        with store.writing() as writer:
            keep_people(writer.connection, _people(archive, told))
        for site, end in told.ends.items():
            there = store.at(site)
            with archive.open(_lines_of(site)) as stream:
                count = _add(there, read_lines(stream))
            if there.last() != end:
                raise _other_end(count, end.number)
    own = set(told.ends) - copies(store)
    lost = {k: v for site in own for k, v in lost_originals(store.at(site), read=True).items()}
    if lost:
        raise RecordError(
            "Every entry is restored. Original files that they name and that are not in the"
            " backup: {count}, entries {numbers}.",
            count=len(lost),
            numbers=", ".join(str(n) for n in sorted(lost.values())),
        )
    return told


def import_lines(stream: BinaryIO, store: Store) -> int:
    """Put exported JSON lines into an empty store, against the chain; original files are not among them.
    Raises RecordError: the store is not empty, or a line does not fit.
    """
    _empty(store)
    return _add(store, read_lines(stream))


def _empty(store: Store) -> None:
    if any(store.at(site).last().number for site in store.sites()):
        raise RecordError(
            "The store holds entries already: restore into a new one, so that nothing is mixed."
        )


def _add(store: Store, items: Iterable[Recorded]) -> int:
    block: list[Recorded] = []
    count = 0

    def flush() -> None:
        with store.writing() as writer:
            writer.extend(block)
        block.clear()

    for item in Walk().passed(items):
        block.append(item)
        count += 1
        if len(block) == BLOCK:
            flush()
    if block:
        flush()
    return count


def _named(info: zipfile.ZipInfo) -> str:
    """Name of an original file in a backup: its hash, of a size that is one."""
    name = info.filename.removeprefix("files/")
    if len(name) != 64 or not set(name) <= set("0123456789abcdef"):
        raise RecordError("The backup names a file {name}, which is no hash.", name=repr(info.filename[:80]))
    if info.file_size > LARGEST_FILE_BYTES:
        raise RecordError(
            "File {name}… of the backup is larger than {most} MB.",
            name=name[:12],
            most=LARGEST_FILE_BYTES // 1000000,
        )
    return name


def _restore_file(archive: zipfile.ZipFile, info: zipfile.ZipInfo, files: Attachments) -> None:
    name = _named(info)
    with archive.open(info) as stream:
        kept, _ = files.keep(stream)  # type: ignore[arg-type]
    if kept != name:
        (files.folder / kept).unlink(missing_ok=True)
        raise _changed(name)


@contextmanager
def _read(path: Path) -> Iterator[None]:
    """A file that is damaged is told, wherever it breaks."""
    try:
        yield
    except (zipfile.BadZipFile, zlib.error, EOFError, RecursionError, NotImplementedError) as error:
        raise RecordError("{path} is damaged: {cause}", path=path, cause=error) from error


def _check_files(archive: zipfile.ZipFile, told: Manifest) -> None:
    """Every original file the manifest counts is there, with the content its name says."""
    found = 0
    for info in archive.infolist():
        if info.filename.startswith("files/"):
            name, digest = _named(info), hashlib.sha256()
            with archive.open(info) as stream:
                while piece := stream.read(1 << 20):
                    digest.update(piece)
            if digest.hexdigest() != name:
                raise _changed(name)
            found += 1
    if found != told.files_count:
        raise RecordError(
            "Original files in the backup: {found}. Its manifest says {told}.",
            found=found,
            told=told.files_count,
        )


def _changed(name: str) -> RecordError:
    return RecordError(
        "File {name}… of the backup was changed: its content does not fit its name.", name=name[:12]
    )


def _opened(path: Path) -> zipfile.ZipFile:
    try:
        return zipfile.ZipFile(path)
    except (OSError, zipfile.BadZipFile) as error:
        raise RecordError("{path} is not a backup of ours: {cause}", path=path, cause=error) from error


def _manifest(archive: zipfile.ZipFile) -> Manifest:
    try:
        info = archive.getinfo("manifest.json")
        if info.file_size > LARGEST_MANIFEST_BYTES:
            raise RecordError("The backup's manifest is too large to be ours.")
        told = json.loads(archive.read(info))
        if told["format"] not in (FORMAT, FORMAT_OF_SEVERAL, FORMAT_WITH_PEOPLE):
            raise RecordError(
                "The backup has format {found}; this program reads {known}.",
                found=repr(str(told["format"])[:40]),
                known=f"{FORMAT}, {FORMAT_OF_SEVERAL}, {FORMAT_WITH_PEOPLE}",
            )
        rows = {HOME: told, **told.get("at", {})}
        ends = {
            site: Point(number=int(row["entries_count"]), hash=str(row["last_hash"]))
            for site, row in rows.items()
        }
        there = {n for n in archive.namelist() if n == _lines_of(HOME) or n.startswith("at/")}
        if there != {_lines_of(site) for site in ends}:
            raise RecordError("The backup holds other kitchens than its manifest says.")
        people_count = int(told.get("people_count", 0))
        return Manifest(ends=ends, files_count=int(told["files_count"]), people_count=people_count)
    except (KeyError, ValueError, TypeError) as error:
        raise RecordError("The backup's manifest cannot be read: {cause}", cause=error) from error


def read_lines(stream: Any) -> Iterator[Recorded]:
    """Entries of exported JSON lines; a line longer than any entry is refused before it is read whole.
    Raises RecordError: a line that is none of ours, with its number.
    """
    number = 0
    while line := stream.readline(LONGEST_LINE_BYTES + 1):
        number += 1
        if len(line) > LONGEST_LINE_BYTES:
            raise RecordError("Line {number} is longer than any entry.", number=number)
        if not line.strip():
            continue
        try:
            row = json.loads(line)
        except (ValueError, RecursionError) as error:
            raise _no_entry(number, error) from error
        yield as_recorded(row, number)


def as_recorded(row: Any, number: int) -> Recorded:
    """An exported entry, whose hash nobody has checked yet. Raises RecordError: it is none of ours;
    ``number`` says which line it is.
    """
    try:
        entry = Entry(
            kind=row["kind"],
            happened_at=unstamp(row["happened_at"]),
            author=row["author"],
            payload=dict(row["payload"]),
            replaces=row["replaces"],
            versions=row["versions"],
        )
        return Recorded(
            number=int(row["number"]),
            entry=entry,
            recorded_at=unstamp(row["recorded_at"]),
            previous_hash=row["previous_hash"],
            hash=row["hash"],
        )
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError) as error:
        raise _no_entry(number, error) from error


def _no_entry(number: int, error: Exception) -> RecordError:
    return RecordError("Line {number} is no entry of ours: {cause}", number=number, cause=error)
