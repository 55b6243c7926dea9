"""Is the server alive, can it take notes, and what does it speak (OpenAPI 3.1)."""

from __future__ import annotations

from flask import Blueprint, jsonify

from logbook import store
from logbook.mistake import Mistake
from logbook.web import answers, opened, openapi

screen = Blueprint("health", __name__)


@screen.get("/health")
def alive():
    return jsonify(alive=True)


@screen.get("/ready")
def ready():
    """Ready: the folder opens and has room. Says nothing of what is in it."""
    refused = store.room(opened.folder())
    return answers.refuse(refused) if isinstance(refused, Mistake) else jsonify(ready=True)


@screen.get("/openapi.json")
def described():
    return jsonify(openapi.document())
