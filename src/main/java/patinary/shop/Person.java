package patinary.shop;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.UUID;

/** Somebody who may sign in. */
@Entity
@Table(name = "person")
@SuppressWarnings("NullAway.Init")
class Person {

    @Id
    UUID id;

    String name;

    @Column(name = "password_hash")
    String passwordHash;

    @Enumerated(EnumType.STRING)
    Role role;

    @Column(name = "created_at")
    Instant createdAt;

    @Version
    long version;

    protected Person() {}

    Person(UUID id, String name, String passwordHash, Role role, Instant createdAt) {
        this.id = id;
        this.name = name;
        this.passwordHash = passwordHash;
        this.role = role;
        this.createdAt = createdAt;
    }
}
