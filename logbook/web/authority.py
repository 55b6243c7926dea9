"""The server's own certificate authority: made on first use, kept in the state folder, trusted phone by phone.

The authority (EC P-256) may only vouch for this server's name, names in `.local` and private addresses: its name
constraints are critical, so a stolen key opens no door elsewhere. A leaf lives at most 820 days (phones refuse
more than 825) and is renewed; the authority never is, because every phone would have to trust it again.
"""

from __future__ import annotations

import ipaddress
import os
import plistlib
import uuid
from datetime import UTC, datetime, timedelta
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

AUTHORITY, AUTHORITY_KEY = "authority.crt", "authority.key"
LEAF, LEAF_KEY = "server.crt", "server.key"
AUTHORITY_DAYS, LEAF_DAYS, RENEW_DAYS = 7300, 820, 60
PRIVATE = (
    "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "127.0.0.0/8", "169.254.0.0/16", "fc00::/7", "fe80::/10", "::1/128",
)  # RFC 1918, 3927, 4193, 4291: addresses that no router outside carries


def ensure(state: Path, names: tuple[str, ...], now: datetime | None = None) -> tuple[Path, Path]:
    """(certificate chain, key) of a leaf for these names and addresses; makes or renews what is missing or old."""
    now = now or datetime.now(UTC)
    state.mkdir(mode=0o700, parents=True, exist_ok=True)
    if not (state / AUTHORITY).exists():
        _make_authority(state, names[0], now)
    if not _fits(state / LEAF, names, now):
        _make_leaf(state, names, now)
    return state / LEAF, state / LEAF_KEY


def may_vouch_for(address: ipaddress.IPv4Address | ipaddress.IPv6Address) -> bool:
    """Whether the authority's name constraints hold this address: one outside would make the whole leaf void."""
    return any(address in net for net in map(ipaddress.ip_network, PRIVATE) if net.version == address.version)


def path(state: Path) -> Path | None:
    """The authority's certificate, for phones to trust; None where this server made none."""
    return state / AUTHORITY if (state / AUTHORITY).exists() else None


def profile(state: Path) -> bytes | None:
    """The authority as a configuration profile, the way an iPhone takes it."""
    found = path(state)
    if found is None:
        return None
    certificate = x509.load_pem_x509_certificate(found.read_bytes())
    der = certificate.public_bytes(serialization.Encoding.DER)
    own = uuid.uuid5(uuid.NAMESPACE_OID, certificate.fingerprint(hashes.SHA256()).hex())
    name = certificate.subject.get_attributes_for_oid(NameOID.COMMON_NAME)[0].value
    payload = {
        "PayloadType": "com.apple.security.root", "PayloadVersion": 1, "PayloadIdentifier": f"logbook.authority.{own}",
        "PayloadUUID": str(own), "PayloadDisplayName": name, "PayloadContent": der,
    }  # fmt: skip
    whole = {
        "PayloadType": "Configuration", "PayloadVersion": 1, "PayloadIdentifier": f"logbook.{own}",
        "PayloadUUID": str(uuid.uuid5(own, "profile")), "PayloadDisplayName": name, "PayloadContent": [payload],
    }  # fmt: skip
    return plistlib.dumps(whole)


def _make_authority(state: Path, name: str, now: datetime) -> None:
    key = ec.generate_private_key(ec.SECP256R1())
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, f"Fitting logbook {name}"[:64])])
    permitted = [x509.DNSName(one) for one in dict.fromkeys((*_dns((name,)), "local", "localhost"))]
    permitted += [x509.IPAddress(ipaddress.ip_network(net)) for net in PRIVATE]
    made = (
        x509.CertificateBuilder()
        .subject_name(subject)
        .issuer_name(subject)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - timedelta(days=1))
        .not_valid_after(now + timedelta(days=AUTHORITY_DAYS))
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_usage(key_cert_sign=True, crl_sign=True), critical=True)
        .add_extension(x509.NameConstraints(permitted_subtrees=permitted, excluded_subtrees=None), critical=True)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .sign(key, hashes.SHA256())
    )
    _write(state / AUTHORITY_KEY, _pem(key), 0o600)
    _write(state / AUTHORITY, made.public_bytes(serialization.Encoding.PEM), 0o644)


def _make_leaf(state: Path, names: tuple[str, ...], now: datetime) -> None:
    authority = x509.load_pem_x509_certificate((state / AUTHORITY).read_bytes())
    authority_key = serialization.load_pem_private_key((state / AUTHORITY_KEY).read_bytes(), None)
    key = ec.generate_private_key(ec.SECP256R1())
    made = (
        x509.CertificateBuilder()
        .subject_name(x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, names[0][:64])]))
        .issuer_name(authority.subject)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - timedelta(days=1))
        .not_valid_after(min(now + timedelta(days=LEAF_DAYS - 1), authority.not_valid_after_utc))
        .add_extension(x509.BasicConstraints(ca=False, path_length=None), critical=True)
        .add_extension(_usage(digital_signature=True), critical=True)
        .add_extension(x509.ExtendedKeyUsage([ExtendedKeyUsageOID.SERVER_AUTH]), critical=False)
        .add_extension(x509.SubjectAlternativeName(_alternatives(names)), critical=False)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(key.public_key()), critical=False)
        .add_extension(x509.AuthorityKeyIdentifier.from_issuer_public_key(authority.public_key()), critical=False)
        .sign(authority_key, hashes.SHA256())
    )
    _write(state / LEAF_KEY, _pem(key), 0o600)
    chain = made.public_bytes(serialization.Encoding.PEM) + authority.public_bytes(serialization.Encoding.PEM)
    _write(state / LEAF, chain, 0o644)


def _fits(leaf: Path, names: tuple[str, ...], now: datetime) -> bool:
    if not leaf.exists():
        return False
    found = x509.load_pem_x509_certificates(leaf.read_bytes())[0]
    has = found.extensions.get_extension_for_class(x509.SubjectAlternativeName).value
    return set(_alternatives(names)) <= set(has) and found.not_valid_after_utc > now + timedelta(days=RENEW_DAYS)


def _alternatives(names: tuple[str, ...]) -> list[x509.GeneralName]:
    return [x509.IPAddress(_address(one)) if _address(one) else x509.DNSName(one) for one in dict.fromkeys(names)]


def _dns(names: tuple[str, ...]) -> list[str]:
    return [one for one in names if _address(one) is None]


def _address(name: str):
    try:
        return ipaddress.ip_address(name)
    except ValueError:
        return None


def _usage(**on: bool) -> x509.KeyUsage:
    names = (
        "digital_signature", "content_commitment", "key_encipherment", "data_encipherment", "key_agreement",
        "key_cert_sign", "crl_sign", "encipher_only", "decipher_only",
    )  # fmt: skip
    return x509.KeyUsage(**{name: on.get(name, False) for name in names})


def _pem(key) -> bytes:
    return key.private_bytes(
        serialization.Encoding.PEM, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
    )


def _write(file: Path, content: bytes, mode: int) -> None:
    """Whole or not at all: a server killed in between must not leave half a key."""
    part = file.with_suffix(file.suffix + ".part")
    handle = os.open(part, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, mode)
    with os.fdopen(handle, "wb") as out:
        out.write(content)
        out.flush()
        os.fsync(out.fileno())
    os.replace(part, file)
