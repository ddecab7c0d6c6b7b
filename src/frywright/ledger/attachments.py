"""Original files kept byte for byte beside the store, named by their content so that none can be swapped."""

from __future__ import annotations

import hashlib
import os
import tempfile
from pathlib import Path
from typing import BinaryIO

from frywright.ledger.store import Store
from frywright.model.errors import NotKeptError, RecordError

BLOCK_BYTES = 1 << 20


class Attachments:
    """A folder of files named by the SHA-256 of their content."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def keep(self, stream: BinaryIO) -> tuple[str, int]:
        """Copy a stream in; its hash and size. The same content is kept once."""
        try:
            return self._keep(stream)
        except OSError as error:
            raise NotKeptError(error.strerror or error) from error

    def _keep(self, stream: BinaryIO) -> tuple[str, int]:
        self.folder.mkdir(parents=True, exist_ok=True)
        digest, size = hashlib.sha256(), 0
        with tempfile.NamedTemporaryFile(dir=self.folder, delete=False) as part:
            try:
                while block := stream.read(BLOCK_BYTES):
                    digest.update(block)
                    size += len(block)
                    part.write(block)
                part.flush()
                os.fsync(part.fileno())
            except BaseException:
                Path(part.name).unlink(missing_ok=True)
                raise
        os.replace(part.name, self.folder / digest.hexdigest())
        sync_folder(self.folder)
        return digest.hexdigest(), size

    def open(self, name: str) -> BinaryIO:
        """The file of a hash, checked against it. Raises RecordError: the file is missing or its content is
        not what its name says.
        """
        if len(name) != 64 or not all(c in "0123456789abcdef" for c in name):
            raise RecordError("{name} is not the name of a kept file.", name=repr(name))
        path = self.folder / name
        if not path.is_file():  # nor a folder or a pipe, whoever put it there
            raise RecordError(
                "The kept file {name}… is not in {folder}: it was dropped at the end of its time, or is"
                " lost.",
                name=name[:12],
                folder=self.folder,
            )
        digest = hashlib.sha256()
        try:
            stream = path.open("rb")
            while block := stream.read(BLOCK_BYTES):
                digest.update(block)
        except OSError as error:
            raise RecordError(
                "The kept file {name}… cannot be read: {cause}", name=name[:12], cause=error
            ) from error
        if digest.hexdigest() != name:
            stream.close()
            raise RecordError("The kept file {name}… was changed outside the program.", name=name[:12])
        stream.seek(0)
        return stream


def sync_folder(folder: Path) -> None:
    """Make a rename in a folder outlive a power cut, where the system can."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError:
        return  # a system that does not open folders
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def attachments_of(store: Store) -> Attachments:
    """The folder of original files beside a store."""
    return Attachments(store.files)
