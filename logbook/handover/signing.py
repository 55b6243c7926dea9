"""Signing a package with a key of the firm: Ed25519 (RFC 8032) over the bytes of `tagmanifest-sha256.txt`.

The tag manifest holds the digests of the manifests, and these hold the digests of every file: one signature
stands for the whole package. Keys are PEM files; the private one never enters the job folder.
"""

from __future__ import annotations

import json
from base64 import b64decode, b64encode
from collections.abc import Callable
from hashlib import sha256
from pathlib import Path

from cryptography.exceptions import InvalidSignature, UnsupportedAlgorithm
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey, Ed25519PublicKey
from cryptography.hazmat.primitives.serialization import (
    Encoding, NoEncryption, PrivateFormat, PublicFormat, load_pem_private_key, load_pem_public_key,
)  # fmt: skip

from logbook.mistake import Mistake

SIGNS = "tagmanifest-sha256.txt"


def new_key() -> tuple[bytes, bytes]:
    """A fresh pair as PEM: private, public."""
    private = Ed25519PrivateKey.generate()
    public = private.public_key().public_bytes(Encoding.PEM, PublicFormat.SubjectPublicKeyInfo)
    return private.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption()), public


def fingerprint(public: bytes) -> str:
    """SHA-256 of the raw 32 bytes of a public key."""
    return sha256(public).hexdigest()


def signer(path: Path) -> Callable[[bytes], bytes] | Mistake:
    """What `bag.write` needs: from the bytes of the tag manifest to the bytes of the signature file."""
    try:
        key = load_pem_private_key(path.read_bytes(), None)
    except (OSError, ValueError, TypeError, UnsupportedAlgorithm) as error:
        return Mistake("handover.key-unreadable", str(path), {"file": str(path), "why": type(error).__name__})
    if not isinstance(key, Ed25519PrivateKey):
        return Mistake("handover.key-unreadable", str(path), {"file": str(path), "why": type(key).__name__})
    public = key.public_key().public_bytes(Encoding.Raw, PublicFormat.Raw)

    def sign(manifest: bytes) -> bytes:
        told = {"algorithm": "Ed25519", "signs": SIGNS, "key": b64encode(public).decode(), "signature": b64encode(key.sign(manifest)).decode()}
        return (json.dumps(told, indent=1) + "\n").encode()

    return sign


def public_key(path: Path) -> bytes | Mistake:
    """The raw bytes of a public (or private) key file."""
    try:
        content = path.read_bytes()
        key = load_pem_private_key(content, None).public_key() if b"PRIVATE" in content else load_pem_public_key(content)
    except (OSError, ValueError, TypeError, UnsupportedAlgorithm) as error:
        return Mistake("handover.no-public-key", str(path), {"file": str(path), "why": type(error).__name__})
    if not isinstance(key, Ed25519PublicKey):
        return Mistake("handover.no-public-key", str(path), {"file": str(path), "why": type(key).__name__})
    return key.public_bytes(Encoding.Raw, PublicFormat.Raw)


def check(signature: bytes, manifest: bytes, expected: bytes | None) -> tuple[str | None, Mistake | None]:
    """(fingerprint of the key that signed, what is wrong)."""
    try:
        told = json.loads(signature)
        raw, mark = b64decode(told["key"], validate=True), b64decode(told["signature"], validate=True)
        Ed25519PublicKey.from_public_bytes(raw).verify(mark, manifest)
    except (ValueError, KeyError, TypeError):
        return None, Mistake("verify.signature-unreadable", SIGNS)
    except InvalidSignature:
        return None, Mistake("verify.signature-wrong", SIGNS)
    if expected is not None and raw != expected:
        return fingerprint(raw), Mistake("verify.other-key", SIGNS, {"came": fingerprint(raw)[:16], "expected": fingerprint(expected)[:16]})
    return fingerprint(raw), None
